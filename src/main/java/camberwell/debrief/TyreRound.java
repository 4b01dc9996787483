package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.TyreReading;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** One walk round the car with pyrometer and gauge, typed line by line until all tyres are read or that is all. */
final class TyreRound {

    private static final Set<String> ENOUGH = Set.of("that is all", "that's all", "thats all", "only the front", "front only",
            "only front", "rears unknown", "rear unknown", "only the rear", "rear only", "no more", "that is it");
    private static final TyreReading UNREAD = new TyreReading(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty());

    private final List<Map<Wheel, TyreReading>> lines = new ArrayList<>();
    private final List<String> typed = new ArrayList<>();

    /** Whether a line says that there is no more to come. */
    static boolean enough(String typed) {
        return ENOUGH.contains(typed.toLowerCase(Locale.ROOT).replaceAll("[.!]$", ""));
    }

    /** What was typed, line by line. */
    String said() {
        return String.join("; ", typed);
    }

    /** Begins anew. */
    void clear() {
        typed.clear();
        lines.clear();
    }

    /** Whether anything was typed yet. */
    boolean begun() {
        return !lines.isEmpty();
    }

    /** The wheels that are not read yet, the next one first. */
    List<Wheel> left() {
        Map<Wheel, TyreReading> read = all();
        return Stream.of(Wheel.values()).filter(wheel -> !read.containsKey(wheel)).toList();
    }

    /** Takes a line of figures. */
    TyreLine.Read take(String typed, Car car) throws Reply.NoAnswer {
        TyreLine.Read read = TyreLine.of(typed, left(), car);
        lines.add(read.tyres());
        this.typed.add(typed);
        return read;
    }

    /** Takes it that nobody read the next wheel. */
    void skip() {
        lines.add(Map.of(left().get(0), UNREAD));
        typed.add("unknown");
    }

    /** Takes the last line back; false where there is none. */
    boolean back() {
        if (lines.isEmpty()) {
            return false;
        }
        lines.remove(lines.size() - 1);
        typed.remove(typed.size() - 1);
        return true;
    }

    /** What was read; unknown where nothing was. */
    Answer answer() {
        Map<Wheel, TyreReading> read = new LinkedHashMap<>(all());
        read.values().removeIf(tyre -> tyre.equals(UNREAD));
        return read.isEmpty() ? new Answer.Unknown() : new Answer.Read(read);
    }

    private Map<Wheel, TyreReading> all() {
        Map<Wheel, TyreReading> all = new EnumMap<>(Wheel.class);
        lines.forEach(all::putAll);
        return all;
    }
}
