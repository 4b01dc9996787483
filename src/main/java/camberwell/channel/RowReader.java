package camberwell.channel;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads the rows of a log into batches of numbers. No object is made of a cell. */
final class RowReader extends AbstractBaseCsvCallbackHandler<Boolean> {

    private static final int BATCH = 2048;
    /** After so many problems a reader has seen enough. */
    private static final int MOST = 8;

    private final LogSource source;
    private final Layout layout;
    private final Binding[] slots;
    private final int[] slotOf;
    private final boolean[] clock;
    private final char decimal;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> inRow = new ArrayList<>();
    private final double[] row;

    private int column;
    private int fields;
    private boolean headingsAgain;
    private boolean emptyRow;
    private boolean overLines;
    private long line;
    private long rows;
    private boolean cutOff;

    RowReader(LogSource source, Layout layout, List<Binding> bindings) {
        this.source = source;
        this.layout = layout;
        this.slots = bindings.toArray(Binding[]::new);
        this.row = new double[slots.length];
        this.clock = new boolean[slots.length];
        this.decimal = layout.decimal();
        this.slotOf = new int[layout.headings().size()];
        Arrays.fill(slotOf, -1);
        for (int i = 0; i < slots.length; i++) {
            slotOf[slots[i].index()] = i;
            Kind kind = slots[i].channel().kind();
            clock[i] = kind == Kind.TIME || kind == Kind.LAP_TIME;
        }
    }

    /** Rows read. */
    long rows() {
        return rows;
    }

    /** Whether the last line was cut off, and left out. */
    boolean cutOff() {
        return cutOff;
    }

    /**
     * Reads them all.
     *
     * @throws ProblemsException if a cell is no number or a row has not as many as there are columns
     */
    void read(Consumer<Batch> to) {
        CsvReader<Boolean> csv = CsvReader.builder().fieldSeparator(layout.delimiter())
                .commentStrategy(CommentStrategy.SKIP).commentCharacter(layout.comment()).skipEmptyLines(true)
                .extraFieldStrategy(de.siegmar.fastcsv.reader.FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(de.siegmar.fastcsv.reader.FieldMismatchStrategy.IGNORE)
                .maxBufferSize(1 << 20)
                .build(this, new InputStreamReader(source.stream(), layout.charset()));
        csv.skipLines(layout.firstRow() - 1);
        try (CloseableIterator<Boolean> iterator = csv.iterator()) {
            deliver(iterator, to);
        } catch (CsvParseException e) {
            if (e.getCause() instanceof IOException io) {
                throw LogSource.broken(source.name(), io);
            }
            throw new ProblemsException(Problem.error(source.name(), (int) line, 1,
                    "a quotation mark is opened here or further down and never closed, or a line is over a million "
                            + "characters long"));
        } catch (UncheckedIOException e) {
            throw LogSource.broken(source.name(), e.getCause());
        } catch (IOException e) {
            throw LogSource.broken(source.name(), e);
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
    }

    private void deliver(CloseableIterator<Boolean> iterator, Consumer<Batch> to) {
        double[] values = new double[BATCH * slots.length];
        int filled = 0;
        boolean anew = false;
        boolean again = false;
        while (problems.size() < MOST && iterator.hasNext()) {
            iterator.next();
            boolean ragged = fields != slotOf.length && !(fields == slotOf.length + 1 && emptyRow);
            if (ragged && !headingsAgain && !again) {
                Problem wrong = raggedRow();
                // A logger that was switched off leaves its last line cut off; a mark that is opened takes in all that follows.
                cutOff = !iterator.hasNext() && !overLines;
                if (!cutOff) {
                    problems.add(wrong);
                }
                continue;
            }
            if (headingsAgain || again && !inRow.isEmpty()) {
                // Logs that were strung together, each with its headings and perhaps its units.
                if (filled > 0) {
                    to.accept(new Batch(values, filled, anew));
                    values = new double[BATCH * slots.length];
                    filled = 0;
                }
                again = headingsAgain;
                anew = true;
                continue;
            }
            again = false;
            if (!inRow.isEmpty()) {
                problems.addAll(inRow);
                continue;
            }
            System.arraycopy(row, 0, values, filled * slots.length, slots.length);
            rows++;
            if (++filled == BATCH) {
                to.accept(new Batch(values, filled, anew));
                values = new double[BATCH * slots.length];
                filled = 0;
                anew = false;
            }
        }
        if (filled > 0 && problems.isEmpty()) {
            to.accept(new Batch(values, filled, anew));
        }
    }

    private Problem raggedRow() {
        if (overLines) {
            return Problem.error(source.name(), (int) line, 1, "a quotation mark is opened in this line and not closed before "
                    + "the next one begins; take it out, or close it");
        }
        return Problem.error(source.name(), (int) line, Math.max(1, column - 1), "this row has " + fields
                + (fields == 1 ? " cell" : " cells") + ", and there are " + slotOf.length
                + " headings; mend the row or take it out");
    }

    @Override
    protected void handleBegin(long startingLineNumber) {
        line = startingLineNumber;
        column = 1;
        fields = 0;
        headingsAgain = false;
        overLines = false;
        inRow.clear();
    }

    @Override
    protected void handleField(int index, char[] text, int offset, int length, boolean quoted) {
        fields++;
        emptyRow = length == 0;
        overLines |= quoted && endsLine(text, offset, length);
        int slot = index < slotOf.length ? slotOf[index] : -1;
        if (slot >= 0) {
            double value = clock[slot] ? NumberText.time(text, offset, length, decimal)
                    : NumberText.parse(text, offset, length, decimal);
            row[slot] = value == NumberText.NONE ? odd(slot, new String(text, offset, length)) : value;
        }
        column += length + (quoted ? 3 : 1);
    }

    private static boolean endsLine(char[] text, int offset, int length) {
        for (int i = offset; i < offset + length; i++) {
            if (text[i] == '\n' || text[i] == '\r') {
                return true;
            }
        }
        return false;
    }

    /** The number of a lap that is written with a word, or else a problem. */
    private double odd(int slot, String text) {
        Heading heading = layout.headings().get(slots[slot].index());
        if (text.strip().equalsIgnoreCase(heading.text())) {
            headingsAgain = true;
            return Double.NaN;
        }
        if (slots[slot].channel().kind() == Kind.LAP) {
            String digits = text.replaceAll("\\D+", "");
            return digits.isEmpty() || digits.length() > 6 ? Double.NaN : Double.parseDouble(digits);
        }
        String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
        inRow.add(Problem.error(source.name(), (int) line, column, "\"" + shown.replaceAll("\\p{Cc}", " ")
                + "\" in the column \"" + heading.text() + "\" is no number; mend it, or leave the cell empty where "
                + "nothing was measured", decimalMark(text)));
        return Double.NaN;
    }

    private Optional<String> decimalMark(String text) {
        char other = layout.decimal() == ',' ? '.' : ',';
        String turned = text.strip().replace(other, layout.decimal());
        return text.indexOf(other) >= 0 && !Double.isNaN(NumberText.parse(turned, layout.decimal()))
                && NumberText.parse(turned, layout.decimal()) != NumberText.NONE ? Optional.of(turned)
                : Optional.empty();
    }

    @Override
    protected Boolean buildRecord() {
        return true;
    }
}
