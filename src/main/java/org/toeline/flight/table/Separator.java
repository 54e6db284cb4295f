package org.toeline.flight.table;

/** What stands between the cells of a row. */
public enum Separator {
    /** As the rows of the table suggest. */
    GUESS("guess", '\0'),
    COMMA("comma", ','),
    SEMICOLON("semicolon", ';'),
    TAB("tab", '\t'),
    BAR("bar", '|');

    private final String id;
    private final char sign;

    Separator(String id, char sign) {
        this.id = id;
        this.sign = sign;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    Grid cut(String text) {
        return this == GUESS ? Grid.guess(text) : Grid.cut(text, sign);
    }
}
