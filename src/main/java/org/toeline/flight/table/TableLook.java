package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The top of a table as a person looks at it before it is read: the row of headings and the first rows below.
 *
 * @param headings as many as there are columns; some may be empty
 * @param rows     the cells of the first rows that are not blank, each as long as the headings
 */
public record TableLook(List<String> headings, List<List<String>> rows) {

    public TableLook {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /**
     * Looks at the bytes of a table as a template would cut it; the headings stand where the template's are found, else in
     * the first row with more than one cell.
     *
     * @param most rows wanted
     */
    public static TableLook of(byte[] bytes, Template template, int most) {
        Grid grid = template.separator().cut(TableText.of(bytes).text());
        List<String> sought =
                new ArrayList<>(template.columns().stream().map(Column::header).toList());
        sought.addAll(template.remarks());
        int top = Header.find(grid, sought).map(Header::index).orElseGet(() -> firstFilled(grid));
        if (top < 0) {
            return new TableLook(List.of(), List.of());
        }
        Row headings = grid.rows().get(top);
        Header header = new Header(headings, top);
        int width = Math.max(1, header.width());
        List<List<String>> rows = grid.rows().stream()
                .skip(top + 1L)
                .filter(r -> !r.blank())
                .limit(most)
                .map(r -> cells(r, width))
                .toList();
        return new TableLook(IntStream.range(0, width).mapToObj(header::heading).toList(), rows);
    }

    /** Whether every heading of a template stands among these. */
    public boolean has(Template template) {
        List<String> plain = headings.stream().map(Header::plain).toList();
        return !template.columns().isEmpty()
                && template.columns().stream().allMatch(c -> plain.contains(Header.plain(c.header())));
    }

    /** The first cells below a heading; none below one that is not there. */
    public List<String> cells(String heading) {
        int place = headings.indexOf(heading);
        return place < 0 ? List.of() : rows.stream().map(r -> r.get(place)).toList();
    }

    private static int firstFilled(Grid grid) {
        for (int i = 0; i < grid.rows().size(); i++) {
            if (grid.rows().get(i).filled() > 1) {
                return i;
            }
        }
        return grid.rows().isEmpty() ? -1 : 0;
    }

    private static List<String> cells(Row row, int width) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            cells.add(row.cell(i));
        }
        return cells;
    }
}
