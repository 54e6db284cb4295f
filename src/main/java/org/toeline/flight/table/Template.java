package org.toeline.flight.table;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.toeline.language.Sentences;

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
            throw new IllegalArgumentException(Sentences.of(Template.class).of("template.name"));
        }
        columns = List.copyOf(columns);
        remarks = List.copyOf(remarks);
        Set<Meaning> seen = EnumSet.noneOf(Meaning.class);
        for (Column column : columns) {
            if (!seen.add(column.meaning())) {
                throw new IllegalArgumentException(Sentences.of(Template.class)
                        .of("template.twice", name, column.meaning().id()));
            }
        }
    }

    public Template withName(String other) {
        return new Template(other, separator, decimalMark, columns, remarks);
    }
}
