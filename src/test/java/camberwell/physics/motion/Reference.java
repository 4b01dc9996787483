package camberwell.physics.motion;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A table of numbers with a head line; lines with a hash in front say where it comes from. */
record Reference(List<String> columns, List<double[]> rows) {

    static Reference read(String name) {
        List<String> columns = List.of();
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Reference.class.getResourceAsStream("/motion/" + name + ".csv"), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.startsWith("#")) {
                    continue;
                }
                String[] cells = line.split(",");
                if (columns.isEmpty()) {
                    columns = List.of(cells);
                    continue;
                }
                double[] row = new double[cells.length];
                for (int i = 0; i < row.length; i++) {
                    row[i] = Double.parseDouble(cells[i]);
                }
                rows.add(row);
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return new Reference(columns, rows);
    }

    double at(int row, String column) {
        return rows.get(row)[columns.indexOf(column)];
    }

    /** Value at a time between rows that are a tenth of a second apart. */
    double at(double time, String column) {
        int row = (int) Math.min(rows.size() - 2.0, Math.floor(time / 0.1 + 1e-9));
        double part = (time - 0.1 * row) / 0.1;
        return (1 - part) * at(row, column) + part * at(row + 1, column);
    }

    double largest(String column) {
        return rows.stream().mapToDouble(row -> Math.abs(row[columns.indexOf(column)])).max().orElseThrow();
    }
}
