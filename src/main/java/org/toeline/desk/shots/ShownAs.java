package org.toeline.desk.shots;

import java.util.function.Function;
import javafx.util.StringConverter;

/** How a choice is written in its box; boxes of choices are never typed into. */
final class ShownAs<T> extends StringConverter<T> {

    private final Function<T, String> words;

    ShownAs(Function<T, String> words) {
        this.words = words;
    }

    @Override
    public String toString(T choice) {
        return choice == null ? "" : words.apply(choice);
    }

    @Override
    public T fromString(String text) {
        throw new UnsupportedOperationException("a choice is picked, not typed: " + text);
    }
}
