package camberwell.debrief;

import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words that may be typed just now, for completion and for a program. */
final class Offers {

    private Offers() {
    }

    /** Everything that may stand where the prompt is. */
    static List<String> completions(Optional<Question> question, Debrief debrief) {
        List<String> words = new ArrayList<>();
        question.ifPresent(it -> {
            Field field = it.topic().field();
            debrief.cars(it.topic()).forEach(car -> words.add(Understanding.id(it.topic(), car)));
            field.words().forEach(word -> words.add(word.id()));
            it.topic().own().ifPresent(own -> words.addAll(own.answers().keySet()));
            field.alongside().forEach(with -> with.words().forEach(word -> words.add(word.id())));
            if (field == Field.SIMULATOR) {
                words.addAll(List.of("car", "simulator"));
            }
            if (field == Field.TYRES || field == Field.LOOK || field == Field.ELSE) {
                words.add("no");
            }
        });
        words.addAll(Commands.WORDS);
        debrief.entries().forEach(entry -> words.add("change " + entry.topic().name()));
        return words.stream().distinct().toList();
    }

    /** The words to choose from. */
    static List<String> choices(Optional<Question> question, Debrief debrief) {
        return question.stream().flatMap(it -> debrief.cars(it.topic()).isEmpty()
                ? Asking.listed(it).stream().map(Word::id)
                : debrief.cars(it.topic()).stream().map(car -> Understanding.id(it.topic(), car))).toList();
    }
}
