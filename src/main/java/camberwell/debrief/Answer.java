package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Map;

/** What somebody answered. */
public sealed interface Answer {

    /** Nobody knows: the question is closed, and nothing follows. */
    record Unknown() implements Answer {
    }

    /** Words of the vocabulary: one, or several where the field lets them. */
    record Said(List<Word> words) implements Answer {

        public Said {
            words = List.copyOf(words);
        }

        /** One word. */
        public static Said of(Word word) {
            return new Said(List.of(word));
        }
    }

    /** A kind of car. */
    record OfCar(Car car) implements Answer {
    }

    /** Figures of the tyres, as far as they were read. */
    record Read(Map<Wheel, TyreReading> tyres) implements Answer {
    }

    /** One number with its unit. */
    record Measured(Quantity quantity) implements Answer {
    }
}
