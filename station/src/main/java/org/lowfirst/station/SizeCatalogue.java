package org.lowfirst.station;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.VolumeUnit;

/**
 * The generic sizes of cylinder to pick from. Immutable.
 *
 * @param sizes in the order of the file
 */
public record SizeCatalogue(List<Size> sizes) {

    private static final int COLUMNS = 12;

    public SizeCatalogue {
        sizes = List.copyOf(sizes);
    }

    /** The catalogue that comes with the program. */
    public static SizeCatalogue bundled() {
        return of(CsvTable.ofResource("sizes.csv", COLUMNS));
    }

    static SizeCatalogue of(CsvTable table) {
        Set<String> labels = new HashSet<>();
        for (CsvTable.Row row : table.rows()) {
            if (!labels.add(row.cell(0))) {
                throw row.wrong("the size " + row.cell(0) + " is there twice.");
            }
        }
        return new SizeCatalogue(table.rows().stream().map(SizeCatalogue::size).toList());
    }

    public Optional<Size> findSize(String label) {
        return sizes.stream().filter(size -> size.label().equals(label)).findFirst();
    }

    private static Size size(CsvTable.Row row) {
        return new Size(
                row.cell(0),
                volumes(row),
                optional(row, 4),
                new StatedPressure(
                        number(row, 5),
                        UnitSymbols.findPressure(row.cell(6))
                                .orElseThrow(() -> row.wrong("the unit " + row.cell(6) + " is not one of pressure."))),
                row.cell(7).isEmpty() ? null : choice(row, 7, Material.class),
                masses(row),
                new SizeOrigin(row.cell(10), choice(row, 11, SizeOrigin.Status.class)));
    }

    private static Size.VolumeSpan volumes(CsvTable.Row row) {
        BigDecimal lowest = number(row, 1);
        BigDecimal highest = number(row, 2);
        if (lowest.compareTo(highest) > 0) {
            throw row.wrong("the lowest water volume is above the highest.");
        }
        boolean derived = row.cell(3).equals("derived");
        if (!derived && !row.cell(3).equals("nominal")) {
            throw row.wrong("the basis of the water volume must be derived or nominal.");
        }
        return new Size.VolumeSpan(
                new StatedVolume(lowest, VolumeUnit.LITRE), new StatedVolume(highest, VolumeUnit.LITRE), derived);
    }

    private static Size.@Nullable MassSpan masses(CsvTable.Row row) {
        BigDecimal lowest = optional(row, 8);
        BigDecimal highest = optional(row, 9);
        if (lowest == null || highest == null) {
            return null;
        }
        if (lowest.compareTo(highest) > 0) {
            throw row.wrong("the lowest mass is above the highest.");
        }
        return new Size.MassSpan(lowest, highest);
    }

    private static BigDecimal number(CsvTable.Row row, int column) {
        BigDecimal number = optional(row, column);
        if (number == null) {
            throw row.wrong("column " + (column + 1) + " is empty; a number is needed.");
        }
        return number;
    }

    private static @Nullable BigDecimal optional(CsvTable.Row row, int column) {
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            return null;
        }
        if (!cell.matches("[0-9]+(\\.[0-9]+)?") || new BigDecimal(cell).signum() <= 0) {
            throw row.wrong("column " + (column + 1) + " (" + cell + ") must be a number above zero.");
        }
        return new BigDecimal(cell);
    }

    private static <E extends Enum<E>> E choice(CsvTable.Row row, int column, Class<E> type) {
        String wanted = row.cell(column).toUpperCase(Locale.ROOT);
        for (E constant : type.getEnumConstants()) {
            if (constant.name().equals(wanted)) {
                return constant;
            }
        }
        throw row.wrong("column " + (column + 1) + " (" + row.cell(column) + ") is not one of "
                + List.of(type.getEnumConstants()) + ".");
    }
}
