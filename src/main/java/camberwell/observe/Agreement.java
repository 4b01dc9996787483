package camberwell.observe;

import camberwell.run.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a complaint of the driver stands to what the log shows.
 *
 * @param said by the driver
 * @param kind of the relation
 * @param shown by the log; empty where it shows nothing of the kind
 */
public record Agreement(Report said, Kind kind, Optional<Report> shown) {

    private static final Set<String> BALANCE = Set.of("understeer", "oversteer", "snap-oversteer");
    private static final Set<String> WHEELS = Set.of("wheelspin", "front-locking", "rear-locking");

    /** How the two stand to each other. */
    public enum Kind {
        /** Both say so. */
        AGREES,
        /** The log shows the opposite. */
        CONTRADICTS,
        /** The log could show it and does not. */
        NOT_SHOWN,
        /** The log can neither show it nor deny it. */
        CANNOT_TELL
    }

    /**
     * What the log has to say to each complaint that was made by a person.
     *
     * @param balanceSeen whether it could have shown which axle slides
     * @param wheelsSeen whether it could have shown a wheel that spins or locks
     */
    public static List<Agreement> of(List<Report> reports, boolean balanceSeen, boolean wheelsSeen) {
        List<Agreement> agreements = new ArrayList<>();
        for (Report said : reports) {
            if (said.measured().isPresent()) {
                continue;
            }
            Optional<Report> alike = reports.stream().filter(it -> it.measured().isPresent() && it.alike(said)).findFirst();
            Optional<Report> against = reports.stream()
                    .filter(it -> it.measured().isPresent() && it.contradicts(said)).findFirst();
            String id = said.symptom().id();
            boolean couldShow = said.phase().isPresent() && (balanceSeen && BALANCE.contains(id)
                    || wheelsSeen && WHEELS.contains(id));
            if (alike.isPresent()) {
                agreements.add(new Agreement(said, Kind.AGREES, alike));
            } else if (against.isPresent()) {
                agreements.add(new Agreement(said, Kind.CONTRADICTS, against));
            } else if (couldShow) {
                agreements.add(new Agreement(said, Kind.NOT_SHOWN, Optional.empty()));
            } else {
                agreements.add(new Agreement(said, Kind.CANNOT_TELL, Optional.empty()));
            }
        }
        return agreements;
    }

    /** In one sentence. */
    public String text() {
        return switch (kind) {
            case AGREES -> "the driver's \"" + said.text() + "\" is borne out: " + shown.orElseThrow().text();
            case CONTRADICTS -> "the driver says \"" + said.text() + "\", and the log shows " + shown.orElseThrow().text()
                    + ": one of the two is wrong. Ask where exactly it was felt, and whether a slide of one end was caught "
                    + "and felt as the other";
            case NOT_SHOWN -> "the driver says \"" + said.text() + "\", and the log does not show it, though it could. Ask "
                    + "in which corner, and look at that one";
            case CANNOT_TELL -> "of the driver's \"" + said.text() + "\" this log shows nothing, and could hardly: that speaks "
                    + "neither for it nor against it";
        };
    }
}
