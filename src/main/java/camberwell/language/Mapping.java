package camberwell.language;

import camberwell.fact.Attribute;
import camberwell.fact.Kind;
import camberwell.fact.Passing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The right side of a dictionary line taken apart: what Drools gets as text, before the gaps are filled. From the same
 * text comes what the sentence means to everybody else, so that the two cannot differ.
 */
sealed interface Mapping {

    /** How a fact is asked: the methods of a premise. */
    enum Operator {
        IS("is"), IS_NOT("isNot"), AT_LEAST("atLeast"), AT_MOST("atMost"), ABOVE("above"), BELOW("below");

        private final String method;

        Operator(String method) {
            this.method = method;
        }

        static Optional<Operator> of(String method) {
            for (Operator operator : values()) {
                if (operator.method.equals(method)) {
                    return Optional.of(operator);
                }
            }
            return Optional.empty();
        }
    }

    /** {@code is("phase", "{phase}", "{other}")}. */
    record Call(Operator operator, String attribute, List<String> answers) {

        /** @throws IllegalArgumentException if such a fact cannot be asked that, or never answers so */
        Question.Ask filled(Kind kind, Map<String, String> words) {
            String name = fill(attribute, words);
            Attribute asked = kind.attribute(name).orElseThrow(() -> new IllegalArgumentException("a " + kind.name()
                    + " has no attribute \"" + name + "\"; write Attribute.of(\"" + name
                    + "\", ...) or Attribute.number(\"" + name + "\", ...) among those of camberwell.fact."
                    + kind.name() + ", and what it answers"));
            List<String> said = new ArrayList<>();
            answers.forEach(answer -> said.add(fill(answer, words)));
            return new Question.Ask(asked, asked.isNumber() ? range(Double.parseDouble(said.get(0)), asked)
                    : words(said, asked));
        }

        private Passing range(double number, Attribute asked) {
            return switch (operator) {
                case ABOVE -> Passing.between(number, Double.MAX_VALUE);
                case BELOW -> Passing.between(-Double.MAX_VALUE, number);
                case AT_LEAST -> Passing.from(number);
                case AT_MOST -> Passing.upTo(number);
                case IS, IS_NOT -> throw new IllegalArgumentException("\"" + asked.name()
                        + "\" is a number: above, below, atLeast or atMost");
            };
        }

        private Passing words(List<String> said, Attribute asked) {
            List<String> all = asked.words();
            for (String word : said) {
                if (asked.isClosed() && !all.contains(word)) {
                    throw new IllegalArgumentException("\"" + asked.name() + "\" is never \"" + word + "\": "
                            + String.join(", ", all));
                }
            }
            return switch (operator) {
                case IS -> Passing.words(said);
                case IS_NOT -> Passing.words(all.stream().filter(word -> !said.contains(word)).toList());
                case AT_LEAST -> Passing.words(all.subList(all.indexOf(said.get(0)), all.size()));
                case AT_MOST -> Passing.words(all.subList(0, all.indexOf(said.get(0)) + 1));
                case ABOVE, BELOW -> throw new IllegalArgumentException("\"" + asked.name()
                        + "\" is a word: is, isNot, atLeast or atMost");
            };
        }
    }

    /** A pattern on one fact, or what narrows one. */
    record Pattern(Kind kind, boolean negative, List<Call> calls) implements Mapping {

        @Override
        public Question filled(Map<String, String> words) {
            List<Question.Ask> asks = new ArrayList<>();
            calls.forEach(call -> asks.add(call.filled(kind, words)));
            return new Question(kind, negative, asks);
        }
    }

    /** What follows. */
    record Consequence(Statement.Verb verb, List<String> arguments) implements Mapping {

        @Override
        public Statement filled(Map<String, String> words) {
            return Statement.of(verb, arguments.stream().map(argument -> fill(argument, words)).toList());
        }
    }

    /**
     * What it means with those words in its gaps.
     *
     * @throws IllegalArgumentException if the words make no sense
     */
    Meaning filled(Map<String, String> words);

    private static String fill(String text, Map<String, String> words) {
        if (text.indexOf('{') < 0) {
            return text;
        }
        String filled = text;
        for (Map.Entry<String, String> word : words.entrySet()) {
            filled = filled.replace("{" + word.getKey() + "}", word.getValue());
            if (filled.indexOf('{') < 0) {
                break;
            }
        }
        return filled;
    }
}
