package stridetally;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Lets one class past a rule of the architecture tests, for a reason that is written down. The tests print all exemptions
 * and refuse a blank reason. It also covers the classes nested in the class.
 */
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
public @interface Exempt {
    /** The fences that the class may pass. */
    Fence[] from();

    /** Why it must. */
    String reason();

    /** A rule that can be lifted. The order of the packages cannot. */
    enum Fence {
        /** Touches the disk outside its package. */
        DISK,
        /** Uses a library outside its package. */
        LIBRARY,
        /** Uses the clock, chance or a default of the machine. */
        MACHINE,
        /** Is a class of a value package without being a value. */
        VALUE,
        /** Catches or throws a general exception. */
        GENERAL_EXCEPTION
    }
}
