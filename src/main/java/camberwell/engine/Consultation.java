package camberwell.engine;

import camberwell.fact.Caution;
import camberwell.fact.Conclusion;
import camberwell.fact.Driving;
import camberwell.fact.Finding;
import camberwell.fact.Preference;
import camberwell.fact.Premise;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.kie.api.runtime.rule.Match;

/**
 * One working memory. Premises go in and out; conclusions follow, since Drools' truth maintenance withdraws what has
 * lost its ground. Not for use by two threads at once.
 */
public final class Consultation implements AutoCloseable {

    /** A rule set that fires more often than this is taken to be going round in circles. */
    static final int FIRING_LIMIT = 20_000;

    private final KieSession session;
    private final Set<String> unspoken;
    private final Map<Premise, FactHandle> handles = new HashMap<>();

    /** @param unspoken the packages of rules that are not told of when they fire */
    Consultation(KieSession session, Set<String> unspoken) {
        this.session = session;
        this.unspoken = unspoken;
    }

    /** Puts a premise in; one that is in already changes nothing. */
    public void insert(Premise premise) {
        handles.computeIfAbsent(premise, session::insert);
    }

    /** Takes a premise out, with all that follows from it. */
    public void withdraw(Premise premise) {
        FactHandle handle = handles.remove(premise);
        if (handle != null) {
            session.delete(handle);
        }
    }

    /** Tells {@code listener} of every rule that fires from now on. */
    public void listen(Consumer<Firing> listener) {
        session.addEventListener(new DefaultAgendaEventListener() {
            @Override
            public void afterMatchFired(AfterMatchFiredEvent event) {
                Match match = event.getMatch();
                if (!unspoken.contains(match.getRule().getPackageName())) {
                    listener.accept(new Firing(match.getRule().getName(), match.getObjects().stream()
                            .filter(Premise.class::isInstance).map(Premise.class::cast).toList()));
                }
            }
        });
    }

    /**
     * What follows from the premises that are in.
     *
     * @throws RuleProblemException if the rules fire without end
     */
    public Conclusions conclude() {
        if (session.fireAllRules(FIRING_LIMIT) >= FIRING_LIMIT) {
            throw new RuleProblemException("the rules fired " + FIRING_LIMIT + " times and were not done: some of them "
                    + "go round in circles");
        }
        List<Finding> findings = new ArrayList<>();
        List<Proposal> proposals = new ArrayList<>();
        List<Preference> preferences = new ArrayList<>();
        List<Withholding> withholdings = new ArrayList<>();
        List<Driving> driving = new ArrayList<>();
        List<Caution> cautions = new ArrayList<>();
        for (Object fact : session.getObjects()) {
            if (fact instanceof Finding finding) {
                findings.add(finding);
            } else if (fact instanceof Proposal proposal) {
                proposals.add(proposal);
            } else if (fact instanceof Preference preference) {
                preferences.add(preference);
            } else if (fact instanceof Withholding withholding) {
                withholdings.add(withholding);
            } else if (fact instanceof Driving advice) {
                driving.add(advice);
            } else if (fact instanceof Caution caution) {
                cautions.add(caution);
            }
        }
        findings.sort(Comparator.comparingDouble(Finding::certainty).reversed().thenComparing(Finding::id));
        proposals.sort(Comparator.comparing(Proposal::change).thenComparing(Conclusion.ORDER));
        preferences.sort(Conclusion.ORDER);
        withholdings.sort(Conclusion.ORDER);
        driving.sort(Conclusion.ORDER);
        cautions.sort(Conclusion.ORDER);
        return new Conclusions(findings, proposals, preferences, withholdings, driving, cautions);
    }

    @Override
    public void close() {
        session.dispose();
    }
}
