package stridetally;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaEnumConstant;
import com.tngtech.archunit.core.domain.TryCatchBlock;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The conditions that the architecture tests of both modules are made of. */
public final class Rules {
    private static final Set<String> GENERAL =
            Set.of("java.lang.Throwable", "java.lang.Exception", "java.lang.RuntimeException", "java.lang.Error");

    private static final String THROWABLE = "java.lang.Throwable";
    private static final Pattern CATCHES_THROWABLE = Pattern.compile("catch\\s*\\([^)]*\\bThrowable\\b");

    private Rules() {}

    /** Classes that no {@link Exempt} lets past the fence. */
    public static DescribedPredicate<JavaClass> heldBy(Exempt.Fence fence) {
        return DescribedPredicate.describe(
                "not exempt from " + fence, javaClass -> !fences(javaClass).contains(fence.name()));
    }

    /** Calls one of the methods, each written as {@code Owner.name(ParameterTypes)} with full class names. */
    public static ArchCondition<JavaClass> use(Set<String> banned) {
        return new ArchCondition<>("use what depends on the machine") {
            @Override
            public void check(JavaClass javaClass, ConditionEvents events) {
                for (JavaAccess<?> access : javaClass.getAccessesFromSelf()) {
                    boolean used = signatures(access).stream().anyMatch(banned::contains);
                    events.add(new SimpleConditionEvent(access, used, access.getDescription()));
                }
            }
        };
    }

    /** Makes an exception of a general type; a subclass that calls its parent's constructor does not. */
    public static ArchCondition<JavaClass> throwGeneralExceptions() {
        return new ArchCondition<>("throw a general exception") {
            @Override
            public void check(JavaClass javaClass, ConditionEvents events) {
                for (JavaConstructorCall call : javaClass.getConstructorCallsFromSelf()) {
                    boolean general = GENERAL.contains(call.getTargetOwner().getName())
                            && !javaClass.isAssignableTo(Throwable.class);
                    events.add(new SimpleConditionEvent(call, general, call.getDescription()));
                }
            }
        };
    }

    /** Catches a general type. Throwable is for {@link #sourcesThatCatchThrowable}: the compiler itself catches it for resources. */
    public static ArchCondition<JavaClass> catchGeneralExceptions() {
        return new ArchCondition<>("catch a general exception") {
            @Override
            public void check(JavaClass javaClass, ConditionEvents events) {
                for (JavaCodeUnit code : javaClass.getCodeUnits()) {
                    for (TryCatchBlock block : code.getTryCatchBlocks()) {
                        boolean general = block.getCaughtThrowables().stream()
                                .map(JavaClass::getName)
                                .anyMatch(name -> GENERAL.contains(name) && !name.equals(THROWABLE));
                        events.add(new SimpleConditionEvent(
                                code,
                                general,
                                code.getFullName() + " catches in general " + block.getSourceCodeLocation()));
                    }
                }
            }
        };
    }

    /** Catches anything by name; what the compiler writes for a resource of a try is not counted. */
    public static ArchCondition<JavaClass> catchAnything() {
        return new ArchCondition<>("catch an exception") {
            @Override
            public void check(JavaClass javaClass, ConditionEvents events) {
                for (JavaCodeUnit code : javaClass.getCodeUnits()) {
                    for (TryCatchBlock block : code.getTryCatchBlocks()) {
                        boolean named = block.getCaughtThrowables().stream()
                                .anyMatch(caught -> !caught.getName().equals(THROWABLE));
                        events.add(new SimpleConditionEvent(
                                code, named, code.getFullName() + " catches " + block.getSourceCodeLocation()));
                    }
                }
            }
        };
    }

    /** The sources that catch Throwable and are not exempt, looked for in the text, where the compiler has added nothing. */
    public static List<Path> sourcesThatCatchThrowable(Path sources) throws IOException {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(sources)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                String text = Files.readString(file);
                if (CATCHES_THROWABLE.matcher(text).find() && !text.contains("Fence.GENERAL_EXCEPTION")) {
                    found.add(file);
                }
            }
        }
        return found;
    }

    /** Is a record, an enum, an interface that is sealed or an annotation, or a final class of final fields only. */
    public static ArchCondition<JavaClass> beValues() {
        return new ArchCondition<>("be values") {
            @Override
            public void check(JavaClass javaClass, ConditionEvents events) {
                events.add(new SimpleConditionEvent(
                        javaClass, isValue(javaClass.reflect()), javaClass.getDescription() + " is not a value"));
            }
        };
    }

    /** All exemptions with their reasons, one a line. */
    public static Set<String> exemptions(Iterable<JavaClass> classes) {
        Set<String> lines = new TreeSet<>();
        for (JavaClass javaClass : classes) {
            exemption(javaClass)
                    .ifPresent(found -> lines.add(javaClass.getName() + " from " + fences(javaClass) + ": "
                            + found.get("reason")
                                    .map(Object::toString)
                                    .orElse("")
                                    .strip()));
        }
        return lines;
    }

    private static boolean isValue(Class<?> type) {
        if (type.isRecord() || type.isEnum() || type.isAnnotation() || type.isSealed()) {
            return true;
        }
        return !type.isInterface()
                && Modifier.isFinal(type.getModifiers())
                && Arrays.stream(type.getDeclaredFields())
                        .filter(field -> !field.isSynthetic())
                        .allMatch(field -> Modifier.isFinal(field.getModifiers()));
    }

    private static Set<String> signatures(JavaAccess<?> access) {
        String parameters = access instanceof JavaCall<?> call
                ? call.getTarget().getRawParameterTypes().stream()
                        .map(JavaClass::getSimpleName)
                        .collect(Collectors.joining(",", "(", ")"))
                : "";
        // A method may be called on a subclass; where it is declared counts as well.
        Set<String> owners = new TreeSet<>(Set.of(access.getTargetOwner().getName()));
        access.getTarget()
                .resolveMember()
                .ifPresent(member -> owners.add(member.getOwner().getName()));
        Set<String> signatures = new TreeSet<>();
        for (String owner : owners) {
            signatures.add(owner + "." + access.getName());
            signatures.add(owner + "." + access.getName() + parameters);
        }
        return signatures;
    }

    private static Set<String> fences(JavaClass javaClass) {
        Set<String> names = new TreeSet<>();
        exemption(javaClass)
                .flatMap(found -> found.get("from"))
                .ifPresent(from -> Arrays.stream((JavaEnumConstant[]) from).forEach(fence -> names.add(fence.name())));
        javaClass.getEnclosingClass().ifPresent(outer -> names.addAll(fences(outer)));
        return names;
    }

    private static Optional<? extends JavaAnnotation<?>> exemption(JavaClass javaClass) {
        return javaClass.tryGetAnnotationOfType(Exempt.class.getName());
    }
}
