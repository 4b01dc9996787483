package camberwell.run;

import camberwell.vocabulary.LapFlag;
import camberwell.vocabulary.Word;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;

/**
 * One lap, written {@code 1:32.41 traffic}, {@code 92.41} or {@code out}.
 *
 * @param seconds its time, if it was taken
 * @param flags what made it no ordinary lap
 */
public record Lap(Optional<Double> seconds, Set<LapFlag> flags) {

    /** No lap is shorter, in seconds. */
    public static final double SHORTEST = 5;
    /** No lap is longer, in seconds. */
    public static final double LONGEST = 3600;
    private static final int MOST_DIGITS = 12;

    /** Copies the flags. */
    public Lap {
        flags = flags.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(flags));
    }

    /** The lap written {@code text}: a time, flags, or a time and flags. */
    public static Optional<Lap> parse(String text) {
        Optional<Double> seconds = Optional.empty();
        EnumSet<LapFlag> flags = EnumSet.noneOf(LapFlag.class);
        String[] words = text.strip().split("\\s+");
        for (int i = 0; i < words.length; i++) {
            Optional<LapFlag> flag = Word.find(LapFlag.class, words[i]);
            if (flag.isPresent()) {
                flags.add(flag.get());
            } else if (i == 0 && time(words[0]).isPresent()) {
                seconds = time(words[0]);
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(new Lap(seconds, flags));
    }

    /** Seconds, or minutes and seconds. */
    private static Optional<Double> time(String word) {
        int colon = word.indexOf(':');
        String minutes = colon < 0 ? "0" : word.substring(0, colon);
        String rest = word.substring(colon + 1);
        if (word.length() > MOST_DIGITS || !digits(minutes) || !rest.chars().allMatch(it -> it == '.'
                || it >= '0' && it <= '9') || rest.isEmpty() || rest.startsWith(".") || rest.endsWith(".")
                || rest.indexOf('.') != rest.lastIndexOf('.')) {
            return Optional.empty();
        }
        double seconds = new BigDecimal(minutes).multiply(BigDecimal.valueOf(60)).add(new BigDecimal(rest))
                .doubleValue();
        boolean plausible = seconds >= SHORTEST && seconds <= LONGEST
                && (colon < 0 || new BigDecimal(rest).compareTo(BigDecimal.valueOf(60)) < 0);
        return plausible ? Optional.of(seconds) : Optional.empty();
    }

    private static boolean digits(String text) {
        return !text.isEmpty() && text.chars().allMatch(it -> it >= '0' && it <= '9');
    }

    /** Whether nothing speaks against its time. */
    public boolean ordinary() {
        return seconds.isPresent() && flags.isEmpty();
    }

    /** As it is written. */
    public String text() {
        StringJoiner text = new StringJoiner(" ");
        seconds.ifPresent(time -> text.add(BigDecimal.valueOf(time).stripTrailingZeros().toPlainString()));
        for (LapFlag flag : LapFlag.values()) {
            if (flags.contains(flag)) {
                text.add(flag.id());
            }
        }
        return text.toString();
    }
}
