package stridetally.cli.options;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder. */
public final class PathWord implements ITypeConverter<Path> {
    @Override
    public Path convert(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException noName) {
            throw new TypeConversionException("'" + text + "' cannot be the name of a file: " + noName.getReason());
        }
    }
}
