package camberwell.language;

import camberwell.fact.Kind;
import camberwell.fact.Reported;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the right side of a dictionary line: {@code Fact(ask("attribute", "answer"), ...)}, with {@code not} in front or
 * without the fact in a narrowing; or {@code Conclude.verb(drools, "argument", ...);}.
 */
final class MappingReader {

    private final String text;
    private int at;

    private MappingReader(String text) {
        this.text = text;
    }

    /** @throws IllegalArgumentException if it is neither */
    static Mapping read(boolean condition, boolean narrowing, String text) {
        MappingReader reader = new MappingReader(text);
        Mapping mapping = !condition ? reader.consequence() : narrowing ? reader.narrowing() : reader.pattern();
        if (reader.at != text.length()) {
            throw reader.wrong("nothing more");
        }
        return mapping;
    }

    private Mapping consequence() {
        expect("Conclude.");
        String method = name();
        Statement.Verb verb = Statement.Verb.of(method).orElseThrow(() ->
                new IllegalArgumentException("camberwell.engine.Conclude has no \"" + method + "\""));
        expect("(drools");
        List<String> arguments = new ArrayList<>();
        while (comma()) {
            arguments.add(argument());
        }
        expect(");");
        if (arguments.size() != verb.arguments()) {
            throw new IllegalArgumentException(method + " takes " + verb.arguments() + " arguments");
        }
        return new Mapping.Consequence(verb, List.copyOf(arguments));
    }

    /** What narrows a report: no other fact has dashes. */
    private Mapping narrowing() {
        return new Mapping.Pattern(Reported.KIND, false, calls());
    }

    private Mapping pattern() {
        boolean negative = text.startsWith("not ");
        at += negative ? "not ".length() : 0;
        String name = name();
        Kind kind = Kind.named(name).orElseThrow(() -> new IllegalArgumentException("there is no fact \"" + name
                + "\": " + String.join(", ", Kind.all().stream().map(Kind::name).toList())));
        expect("(");
        List<Mapping.Call> calls = calls();
        expect(")");
        return new Mapping.Pattern(kind, negative, calls);
    }

    private List<Mapping.Call> calls() {
        List<Mapping.Call> calls = new ArrayList<>(List.of(call()));
        while (comma()) {
            calls.add(call());
        }
        return List.copyOf(calls);
    }

    private Mapping.Call call() {
        String method = name();
        Mapping.Operator operator = Mapping.Operator.of(method).orElseThrow(() ->
                new IllegalArgumentException("a fact is asked is, isNot, atLeast, atMost, above or below, not " + method));
        expect("(");
        String attribute = argument();
        List<String> answers = new ArrayList<>();
        while (comma()) {
            answers.add(argument());
        }
        expect(")");
        if (answers.isEmpty()) {
            throw new IllegalArgumentException(method + "(\"" + attribute + "\") names no answer");
        }
        return new Mapping.Call(operator, attribute, List.copyOf(answers));
    }

    private String name() {
        int from = at;
        while (at < text.length() && Character.isJavaIdentifierPart(text.charAt(at))) {
            at++;
        }
        if (from == at) {
            throw wrong("a name");
        }
        return text.substring(from, at);
    }

    /** A text in quotes, or a number, or a gap for one. */
    private String argument() {
        boolean quoted = text.startsWith("\"", at);
        int from = quoted ? at + 1 : at;
        int to = from;
        while (to < text.length() && (quoted ? text.charAt(to) != '"' : ",)".indexOf(text.charAt(to)) < 0)) {
            to++;
        }
        if (to == text.length() || to == from) {
            throw wrong("an argument");
        }
        at = quoted ? to + 1 : to;
        return text.substring(from, to);
    }

    private boolean comma() {
        boolean there = text.startsWith(", ", at);
        at += there ? 2 : 0;
        return there;
    }

    private void expect(String wanted) {
        if (!text.startsWith(wanted, at)) {
            throw wrong(wanted);
        }
        at += wanted.length();
    }

    private IllegalArgumentException wrong(String wanted) {
        return new IllegalArgumentException("expected " + wanted + " at \"" + text.substring(at) + "\"");
    }
}
