package stridetally.units;

import static java.util.Map.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stridetally.problem.Spelling;

/** The ways people write the units (common practice, no source; the Spanish ones are our translation, no source). */
public final class UnitNames {
    private static final Map<Unit, String> WRITTEN = Map.ofEntries(
            entry(Unit.SECONDS, "s,sec,secs,second,seconds,seg,segundo,segundos"),
            entry(Unit.MINUTES, "min,mins,minute,minutes,minuto,minutos"),
            entry(Unit.HOURS, "h,hr,hrs,hour,hours"),
            entry(Unit.METRES, "m,metre,metres,meter,meters,mtr,mtrs,metro,metros"),
            entry(
                    Unit.CENTIMETRES,
                    "cm,cms,centimetre,centimetres,centimeter,centimeters,centímetro,centímetros,centimetro,centimetros"),
            entry(Unit.MILLIMETRES, "mm,millimetre,millimetres,millimeter,millimeters"),
            entry(Unit.FEET, "ft,foot,feet,'"),
            entry(Unit.INCHES, "in,ins,inch,inches,\",pulgada,pulgadas"),
            entry(Unit.YARDS, "yd,yds,yard,yards"),
            entry(Unit.METRES_PER_SECOND, "m/s,m/sec,mps,metres per second,meters per second"),
            entry(Unit.CENTIMETRES_PER_SECOND, "cm/s,cm/sec,centimetres per second,centimeters per second"),
            entry(Unit.FEET_PER_SECOND, "ft/s,ft/sec,fps,feet per second"),
            entry(Unit.MILLIMETRES_PER_SECOND, "mm/s,mm/sec,millimetres per second,millimeters per second"),
            entry(Unit.KILOMETRES_PER_HOUR, "km/h,kmh,kph,kilometres per hour,kilometers per hour"),
            entry(Unit.STEPS_PER_MINUTE, "steps/min,step/min,spm,steps per minute"),
            entry(Unit.STEPS, "steps,step,pasos,paso"),
            entry(Unit.COUNT, "count,counts,times,time,reps,rep,x,hops,hop,jumps,jump,laps,lap,falls,fall,step-offs"),
            entry(Unit.TRIES, "tries,try,trials,trial,opportunities,opportunity,opps"),
            entry(Unit.PERCENT, "%,percent,per cent,pct"),
            entry(Unit.PROPORTION, "proportion,share"),
            entry(Unit.POINTS, "points,point,pts,pt"),
            entry(Unit.RATIO, "ratio"),
            entry(Unit.CENTIMETRES_PER_STEP_RATE, "cm/(steps/min)"),
            entry(Unit.SQUARE_MILLIMETRES, "mm2,mm^2,mm²"),
            entry(Unit.SQUARE_CENTIMETRES, "cm2,cm^2,cm²"),
            entry(Unit.HERTZ, "hz,hertz"),
            entry(Unit.METRES_PER_SECOND_SQUARED, "m/s2,m/s^2,m/s²"),
            entry(Unit.INTEGRATED_JERK, "m2/s5,m^2/s^5"));
    private static final Map<String, Unit> UNIT_OF = unitOf();

    private UnitNames() {}

    /**
     * The unit written so; case and a closing full stop do not matter. A double quote is seconds beside a time and inches
     * beside anything else, so the measure's own unit must be known.
     */
    public static Optional<Unit> find(String written, Unit target) {
        String name = fold(written);
        if (name.equals("\"") && target.dimension() == Dimension.TIME) {
            return Optional.of(Unit.SECONDS);
        }
        return Optional.ofNullable(UNIT_OF.get(name));
    }

    /** The known name that was probably meant. */
    public static Optional<String> nearest(String written) {
        return Spelling.nearest(fold(written), UNIT_OF.keySet());
    }

    private static String fold(String written) {
        String name = CellText.fold(written);
        while (name.endsWith(".")) {
            name = name.substring(0, name.length() - 1).strip();
        }
        return name;
    }

    private static Map<String, Unit> unitOf() {
        Map<String, Unit> names = new HashMap<>();
        WRITTEN.forEach((unit, written) -> {
            for (String name : written.split(",", -1)) {
                names.put(name, unit);
            }
        });
        return Map.copyOf(names);
    }
}
