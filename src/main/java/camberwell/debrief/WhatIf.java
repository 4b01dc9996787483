package camberwell.debrief;

import camberwell.advice.Advice;
import camberwell.advice.Advisor;
import camberwell.advice.Facts;
import camberwell.engine.Consultation;
import camberwell.fact.Premise;
import camberwell.reading.TyreReader;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * The engine held open. A case goes in and its advice comes out; the next case costs only what differs from the one
 * before, since truth maintenance withdraws what has lost its ground and keeps the rest. Not for use by two threads.
 */
final class WhatIf implements AutoCloseable {

    private final Advisor advisor;
    private final Advisor undriven;
    private final Consultation consultation;
    private final UnaryOperator<Case> informed;
    private Set<Premise> inside = Set.of();

    /**
     * @param consultation an empty one, which this closes
     * @param informed a case with what is known from earlier runs
     */
    WhatIf(Advisor advisor, Consultation consultation, UnaryOperator<Case> informed) {
        this.advisor = advisor;
        this.undriven = advisor.undriven();
        this.consultation = consultation;
        this.informed = informed;
    }

    /** The advice on {@code told}, the same as {@link Advisor#advise} gives. */
    Advice advise(Case told) {
        return advise(told, advisor);
    }

    /** The advice that the rules give, before a car is driven: for the many cases that an answer may lead to. */
    Advice byRules(Case told) {
        return advise(told, undriven);
    }

    private Advice advise(Case told, Advisor by) {
        Case run = informed.apply(told);
        TyreReadings tyres = TyreReader.read(run);
        Set<Premise> wanted = new LinkedHashSet<>(Facts.of(run, tyres, advisor.weights()));
        Set<Premise> gone = new HashSet<>(inside);
        gone.removeAll(wanted);
        gone.forEach(consultation::withdraw);
        wanted.forEach(consultation::insert);
        inside = wanted;
        return by.weigh(run, tyres, consultation.conclude());
    }

    @Override
    public void close() {
        consultation.close();
    }
}
