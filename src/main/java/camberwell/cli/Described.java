package camberwell.cli;

import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;

/**
 * An option that is described in code. Annotations read better, and what the library needs to read them is a sixteenth of
 * the time that a driver waits for advice: so {@code advise} and what it shares with others are described here.
 *
 * @param option as the library knows it
 * @param <T> what is typed
 */
record Described<T>(OptionSpec option) {

    /** A text; null where none was typed. */
    static Described<String> text(String name, String label, String description) {
        return new Described<>(OptionSpec.builder(name).paramLabel(label).type(String.class).description(description).build());
    }

    /** Texts, each after the option's name; none where none was typed. */
    static Described<List<String>> texts(String name, String label, String description) {
        return new Described<>(OptionSpec.builder(name).paramLabel(label).type(List.class).auxiliaryTypes(String.class)
                .initialValue(List.of()).description(description).build());
    }

    /** A word or a number, {@code usual} where none was typed; {@code converter} says what is wrong with it. */
    static <T> Described<T> one(ITypeConverter<T> converter, Class<T> type, String name, String label, String usual,
            String description) {
        return new Described<>(OptionSpec.builder(name).paramLabel(label).type(type).converters(converter).defaultValue(usual)
                .description(description).build());
    }

    /** Whether it was typed. */
    static Described<Boolean> flag(String name, String description) {
        return new Described<>(OptionSpec.builder(name).type(boolean.class).initialValue(false)
                .description(description).build());
    }

    /** What was typed in the line that is being carried out. */
    T value() {
        return option.getValue();
    }
}
