package org.toeline.flight.table;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How to read one kind of table, under a name the coach gave it.
 *
 * @param columns what the columns mean, each meaning once
 * @param remarks headings of columns whose text is kept as the shot's remark, in this order
 */
public record Template(
        String name, Separator separator, DecimalMark decimalMark, List<Column> columns, List<String> remarks) {

    public Template {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a template needs a name");
        }
        columns = List.copyOf(columns);
        remarks = List.copyOf(remarks);
        Set<Meaning> seen = EnumSet.noneOf(Meaning.class);
        for (Column column : columns) {
            if (!seen.add(column.meaning())) {
                throw new IllegalArgumentException("template “" + name + "” has two columns for "
                        + column.meaning().id() + "; one is needed");
            }
        }
    }

    public Template withName(String other) {
        return new Template(other, separator, decimalMark, columns, remarks);
    }
}
