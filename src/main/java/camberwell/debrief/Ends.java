package camberwell.debrief;

import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which tyres are meant, as people say it: {@code front left}, {@code the rears}, {@code rear axle}, {@code lf}. */
final class Ends {

    private static final Map<String, String> SAME = Map.ofEntries(Map.entry("fronts", "front"), Map.entry("nose", "front"),
            Map.entry("rears", "rear"), Map.entry("back", "rear"), Map.entry("backs", "rear"), Map.entry("tail", "rear"),
            Map.entry("fl", "front left"), Map.entry("lf", "front left"), Map.entry("fr", "front right"),
            Map.entry("rf", "front right"), Map.entry("rl", "rear left"), Map.entry("lr", "rear left"),
            Map.entry("rr", "rear right"));
    private static final Set<String> ROUND_IT = Set.of("the", "a", "it", "it's", "its", "is", "was", "at", "on", "in", "of", "i",
            "think", "both", "two", "only", "just", "mostly", "mainly", "tyre", "tyres", "tire", "tires", "axle", "end", "ends",
            "wheel", "wheels", "pair", "one", "ones", "side", "corner", "that", "say", "i'd", "always", "hand");

    private Ends() {
    }

    /** The places that these words name, if they say nothing else; none where they say something else besides. */
    static List<Place> said(String typed) {
        List<Place> places = new ArrayList<>();
        for (String part : typed.strip().toLowerCase(Locale.ROOT).replace('\u2019', '\'').split("[,;+&/]|\\band\\b|\\bplus\\b")) {
            String named = named(part);
            Optional<Place> place = Word.find(Place.class, named);
            if (place.isEmpty() && !named.isEmpty()) {
                return List.of();
            }
            place.ifPresent(places::add);
        }
        return places.stream().distinct().toList();
    }

    /** What is named as the vocabulary writes it; empty where there is nothing but what is said round it. */
    private static String named(String part) {
        String bare = Stream.of(part.strip().replaceAll("[.!?]+$", "").split("[\\s_-]+"))
                .filter(word -> !ROUND_IT.contains(word) && !word.isEmpty())
                .flatMap(word -> Stream.of(SAME.getOrDefault(word, word).split(" ")))
                .distinct().sorted().collect(Collectors.joining("-"));
        return bare.equals("left-rear") ? "rear-left" : bare;
    }
}
