package stridetally.cli.options;

import picocli.CommandLine.ITypeConverter;

/** Takes any text. A class and no lambda: the start-up archive would leave out the interface of a lambda of picocli's. */
final class TextWord implements ITypeConverter<String> {
    @Override
    public String convert(String text) {
        return text;
    }
}
