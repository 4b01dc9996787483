package camberwell.channel;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes out from the first lines of a log how it is written. RFC 4180 knows commas only; loggers also write semicolons,
 * tabs and bars, a decimal comma beside them, lines of notes above the headings and a row of units below.
 */
final class LayoutReader {

    private static final char[] DELIMITERS = {',', ';', '\t', '|'};
    private static final int FEWEST_COLUMNS = 3;
    /** Rows that have to be alike for the numbers to have begun. */
    private static final int ALIKE = 4;
    private static final int LINES_LOOKED_AT = 400;
    private static final Pattern BRACKETED = Pattern.compile("(.*?)\\s*[\\[({<]([^\\])}>]*)[\\])}>]\\s*(.*)");
    private static final Pattern RATE = Pattern.compile(
            "(?i).*(?:sampl|abtast|log|frequen).*?([0-9]+(?:[.,][0-9]+)?)\\W*(hz|1/s)?\\W*$");

    private final String name;
    private final Charset charset;
    private final List<String> lines;

    private LayoutReader(String name, Charset charset, List<String> lines) {
        this.name = name;
        this.charset = charset;
        this.lines = lines;
    }

    /**
     * The layout of the log that begins with {@code head}.
     *
     * @throws ProblemsException if it is no log
     */
    static Layout read(String name, byte[] head) {
        Charset charset = charset(head);
        List<String> lines = charset.decode(ByteBuffer.wrap(head)).toString().replaceFirst("^\uFEFF", "").lines()
                .limit(LINES_LOOKED_AT).toList();
        LayoutReader reader = new LayoutReader(name, charset, lines);
        reader.refuseWhatIsNoText(head);
        return reader.layout();
    }

    private static Charset charset(byte[] head) {
        if (head.length > 1 && (head[0] & 0xff) == 0xff && (head[1] & 0xff) == 0xfe) {
            return StandardCharsets.UTF_16LE;
        }
        if (head.length > 1 && (head[0] & 0xff) == 0xfe && (head[1] & 0xff) == 0xff) {
            return StandardCharsets.UTF_16BE;
        }
        CharsetDecoder utf8 = StandardCharsets.UTF_8.newDecoder();
        // The last character may be cut through.
        return utf8.decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length + 1), false).isError()
                ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
    }

    private void refuseWhatIsNoText(byte[] head) {
        if (lines.stream().allMatch(String::isBlank)) {
            throw wrong(1, 1, "the log is empty");
        }
        if (head.length > 1 && head[0] == 'P' && head[1] == 'K') {
            throw wrong(1, 1, "this is a zip archive or a spreadsheet; save the log as comma-separated values");
        }
        for (int i = 0; i < lines.size(); i++) {
            int zero = lines.get(i).indexOf('\0');
            if (zero >= 0) {
                throw wrong(i + 1, zero + 1, "this is no text; export the log as comma-separated values");
            }
        }
    }

    private ProblemsException wrong(int line, int column, String message) {
        String excerpt = line <= lines.size() ? lines.get(line - 1).replaceAll("\\p{Cc}", " ") : "";
        return new ProblemsException(new Problem(name, line, column, message, Optional.empty(), false, excerpt));
    }

    /** The lines taken apart at one delimiter. */
    private record Taken(char delimiter, char decimal, List<List<String>> rows, int first, int numbers) {
    }

    private Layout layout() {
        Taken best = null;
        for (char delimiter : DELIMITERS) {
            for (char decimal : delimiter == ',' ? new char[] {'.', ','} : new char[] {',', '.'}) {
                Taken taken = take(delimiter, decimal);
                if (taken.first >= 0 && (best == null || taken.numbers > best.numbers)) {
                    best = taken;
                }
            }
        }
        if (best == null) {
            throw noRows();
        }
        char comment = commentCharacter(best.delimiter);
        int headingRow = headingRow(best, comment);
        if (headingRow < 0) {
            throw wrong(best.first + 1, 1, "the numbers begin without a line of headings above them; write one, with a "
                    + "name for each of the " + best.rows.get(best.first).size() + " columns");
        }
        List<String> names = best.rows.get(headingRow);
        List<String> units = unitsBelow(best, headingRow, names.size());
        List<Heading> headings = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            headings.add(heading(i, names.get(i), i < units.size() ? units.get(i) : ""));
        }
        return new Layout(charset, best.delimiter, best.decimal, comment, List.copyOf(headings), headingRow + 1,
                best.first + 1, statedRate(headingRow));
    }

    private Taken take(char delimiter, char decimal) {
        List<List<String>> rows = new ArrayList<>();
        for (String line : lines) {
            rows.add(split(line, delimiter));
        }
        int rowsThere = rows.size();
        for (int i = 0; i < rowsThere; i++) {
            int numbers = 0;
            int alike = 0;
            for (int k = i; k < rowsThere && alike < ALIKE; k++) {
                // A comment between two rows is none of them, and the last line may be cut off.
                if (isComment(lines.get(k)) || lines.get(k).isBlank() && k > i) {
                    continue;
                }
                int found = numbers(rows.get(k), decimal);
                if (rows.get(k).size() != rows.get(i).size() || found < Math.max(2, filled(rows.get(k)) * 0.6)) {
                    break;
                }
                numbers += found;
                alike++;
            }
            int enough = Math.min(ALIKE, Math.max(1, rowsThere - i - 1));
            if (rows.get(i).size() >= FEWEST_COLUMNS && alike >= enough && numbers > 0) {
                return new Taken(delimiter, decimal, rows, i, numbers);
            }
        }
        return new Taken(delimiter, decimal, rows, -1, 0);
    }

    private static boolean isComment(String line) {
        return line.startsWith("#") || line.startsWith("%") || line.startsWith("//");
    }

    /** The cells of a line; quotes hold a delimiter in. */
    private static List<String> split(String line, char delimiter) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter == '"') {
                boolean doubled = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (doubled) {
                    cell.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (letter == delimiter && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(letter);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    private static int numbers(List<String> cells, char decimal) {
        int numbers = 0;
        for (String cell : cells) {
            double value = NumberText.time(cell.toCharArray(), 0, cell.length(), decimal);
            numbers += value > NumberText.NONE || Double.isNaN(value) && !cell.isEmpty() ? 1 : 0;
        }
        return numbers;
    }

    private static long filled(List<String> cells) {
        return cells.stream().filter(cell -> !cell.isEmpty()).count();
    }

    private char commentCharacter(char delimiter) {
        return delimiter != '%' && lines.stream().anyMatch(line -> line.startsWith("%")) ? '%' : '#';
    }

    /** The row above the numbers in which most cells are known as headings; of text, at least. */
    private int headingRow(Taken taken, char comment) {
        int best = -1;
        int most = -1;
        for (int i = taken.first - 1; i >= 0 && i >= taken.first - 30; i--) {
            List<String> cells = taken.rows.get(i);
            if (isComment(lines.get(i))) {
                cells = split(lines.get(i).replaceFirst("^(//|[#%])+\\s*", ""), taken.delimiter);
                taken.rows.set(i, cells);
            }
            int columns = taken.rows.get(taken.first).size();
            if (cells.size() < columns - 1 || cells.size() > columns + 1
                    || numbers(cells, taken.decimal) > filled(cells) / 2 || filled(cells) < 2) {
                continue;
            }
            int known = 0;
            for (int k = 0; k < cells.size(); k++) {
                known += HeadingWords.guesses(heading(k, cells.get(k), "")).isEmpty() ? 0 : 1;
            }
            if (known > most || known == most && filled(cells) > filled(taken.rows.get(best))) {
                most = known;
                best = i;
            }
        }
        return best;
    }

    private List<String> unitsBelow(Taken taken, int headingRow, int columns) {
        Set<Scale> any = EnumSet.allOf(Scale.class);
        for (int i = headingRow + 1; i < taken.first; i++) {
            List<String> cells = taken.rows.get(i);
            if (isComment(lines.get(i)) || cells.size() < columns - 1) {
                cells = split(lines.get(i).replaceFirst("^(//|[#%])+\\s*", ""), taken.delimiter);
            }
            long units = cells.stream().map(LayoutReader::bare)
                    .filter(cell -> !cell.isEmpty() && LoggedUnit.find(cell, any).isPresent()).count();
            if (cells.size() >= columns - 1 && units >= 2 && units * 2 >= filled(cells)) {
                return cells.stream().map(LayoutReader::bare).toList();
            }
        }
        return List.of();
    }

    /** Without the brackets around it. */
    private static String bare(String unit) {
        return unit.replaceAll("^[\\[({<]+|[\\])}>]+$", "").strip();
    }

    private static Heading heading(int index, String text, String unitBelow) {
        Matcher bracketed = BRACKETED.matcher(text);
        if (!bracketed.matches()) {
            return new Heading(index, text, text, unitBelow);
        }
        String inside = bracketed.group(2).strip();
        boolean unit = LoggedUnit.find(inside, EnumSet.allOf(Scale.class)).isPresent();
        String outside = (bracketed.group(1) + " " + bracketed.group(3)).strip();
        return unit && !outside.isEmpty() ? new Heading(index, text, outside, inside.isEmpty() ? unitBelow : inside)
                : new Heading(index, text, outside.isEmpty() ? inside : text, unitBelow);
    }

    private OptionalDouble statedRate(int headingRow) {
        for (int i = 0; i < headingRow; i++) {
            Matcher rate = RATE.matcher(lines.get(i).replace("\"", " ").replaceAll("[;,\t|:=]+\\s*", " "));
            if (rate.matches()) {
                double hertz = Double.parseDouble(rate.group(1).replace(',', '.'));
                if (hertz >= 1 && hertz <= 2000) {
                    return OptionalDouble.of(hertz);
                }
            }
        }
        return OptionalDouble.empty();
    }

    private ProblemsException noRows() {
        for (int i = 0; i < lines.size(); i++) {
            for (char delimiter : DELIMITERS) {
                List<String> cells = split(lines.get(i), delimiter);
                long known = cells.stream().filter(cell -> !HeadingWords.guesses(heading(0, cell, "")).isEmpty()).count();
                if (known >= FEWEST_COLUMNS) {
                    return wrong(i + 2, 1, "below the headings there are no rows of numbers");
                }
            }
        }
        return wrong(1, 1, "no rows of numbers were found in " + (lines.size() == 1 ? "its one line" : "the first "
                + lines.size() + " lines") + "; a log has a line of "
                + "headings and below it a row for each sample, with commas, semicolons or tabs between at least "
                + FEWEST_COLUMNS + " columns");
    }
}
