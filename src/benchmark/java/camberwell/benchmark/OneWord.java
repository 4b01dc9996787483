package camberwell.benchmark;

/** A Java machine that prints one word: what every other process is measured against. */
public final class OneWord {

    private OneWord() {
    }

    public static void main(String[] arguments) {
        System.out.println("ready");
    }
}
