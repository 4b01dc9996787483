package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.Pupil;
import camberwell.run.Stint;
import camberwell.run.TyreReading;
import camberwell.saying.Heard;
import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What somebody answered. */
public sealed interface Answer {

    /** Nobody knows: the question is closed, and nothing follows. */
    record Unknown() implements Answer {
    }

    /**
     * Words of the vocabulary.
     *
     * @param groups the words that belong together, at least one; several groups where something happens in several
     *         ways, for instance on entry in slow corners and in the middle of fast ones
     */
    record Said(List<List<Word>> groups) implements Answer {

        /** Copies the lists. */
        public Said {
            groups = groups.stream().map(List::copyOf).toList();
        }

        /** Words that belong together. */
        public static Said of(Word... words) {
            return new Said(List.of(List.of(words)));
        }

        /** Several things, with one word each. */
        public static Said each(List<? extends Word> words) {
            return new Said(words.stream().map(word -> List.<Word>of(word)).toList());
        }

        /** Whether it is one word. */
        public boolean single() {
            return groups.size() == 1 && groups.get(0).size() == 1;
        }
    }

    /** A kind of car, or a car of which only the driven wheels are known. */
    record OfCar(Car car) implements Answer {
    }

    /** Figures of the tyres, as far as they were read. */
    record Read(Map<Wheel, TyreReading> tyres) implements Answer {
    }

    /** The driver's own words, as far as they were understood. */
    record InWords(Heard heard) implements Answer {
    }

    /**
     * A complaint told otherwise.
     *
     * @param groups what is said of it instead, with another symptom or without one, and what is told besides; none where the
     *         complaint is taken back
     */
    record Corrected(List<List<Word>> groups) implements Answer {

        /** Copies the lists. */
        public Corrected {
            groups = groups.stream().map(List::copyOf).toList();
        }
    }

    /** That nothing was wrong, or nothing more, and that what nobody said is as it is taken. */
    record Nothing() implements Answer {
    }

    /** Yes or no. */
    record Either(boolean yes) implements Answer {
    }

    /** One of the choices of a doubt. */
    record Chosen(Doubt.Choice choice) implements Answer {
    }

    /** What was changed since the run before. */
    record Changed(Earlier.Changed settings) implements Answer {
    }

    /**
     * What is said of the day, the run and the driver.
     *
     * @param text all of it in words
     */
    record OfRun(Optional<Quantity> air, Stint stint, Pupil pupil, String text) implements Answer {
    }

    /** One number with its unit. */
    record Measured(Quantity quantity) implements Answer {
    }
}
