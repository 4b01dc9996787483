package camberwell.channel;

import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One thing that is logged.
 *
 * @param kind what it is
 * @param place the wheel or the axle that it belongs to, where there is more than one
 */
public record Channel(Kind kind, Optional<Place> place) implements Comparable<Channel> {

    private static final List<Channel> ALL = all();

    /** The one channel of a kind that no wheel or axle has for itself. */
    public static Channel of(Kind kind) {
        return new Channel(kind, Optional.empty());
    }

    /** The channel of a wheel or an axle. */
    public static Channel of(Kind kind, Place place) {
        return new Channel(kind, Optional.of(place));
    }

    /** The channel written {@code id}: {@code speed}, {@code front-left-wheel-speed}. */
    public static Optional<Channel> find(String id) {
        return ALL.stream().filter(channel -> channel.id().equals(id)).findFirst();
    }

    /** Every channel there is. */
    public static List<Channel> known() {
        return ALL;
    }

    private static List<Channel> all() {
        List<Channel> all = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (!kind.ofPlace()) {
                all.add(of(kind));
            }
            for (Place place : Place.values()) {
                if (kind.ofPlace() || kind == Kind.BRAKE && !place.id().contains("-")) {
                    all.add(of(kind, place));
                }
            }
        }
        return List.copyOf(all);
    }

    /** As it is written in a channel map. */
    public String id() {
        return place.map(where -> where.id() + "-").orElse("") + kind.id();
    }

    /** In words: {@code front left wheel speed}. */
    public String spoken() {
        return (place.map(Word::id).orElse("") + " " + kind.id()).strip().replace('-', ' ');
    }

    @Override
    public int compareTo(Channel other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : Integer.compare(place.map(Place::ordinal).orElse(-1),
                other.place.map(Place::ordinal).orElse(-1));
    }

    @Override
    public int hashCode() {
        return 31 * kind.ordinal() + place.map(Place::ordinal).orElse(-1);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Channel channel && compareTo(channel) == 0;
    }
}
