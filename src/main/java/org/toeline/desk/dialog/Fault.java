package org.toeline.desk.dialog;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;

/**
 * What is wrong with a field, said beside it; takes no room while all is well. It is looked at when the field is left, and from
 * then on at every key until it is mended.
 */
public final class Fault extends Label {

    private static final PseudoClass FAULTY = PseudoClass.getPseudoClass("faulty");

    private final TextInputControl field;
    private final Supplier<Optional<String>> rule;

    /** @param rule the sentence about what the field holds; empty when all is well */
    public Fault(TextInputControl field, Supplier<Optional<String>> rule) {
        this.field = field;
        this.rule = rule;
        setId(field.getId() + "-fault");
        getStyleClass().add("doubt");
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
        show(Optional.empty());
        field.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                isWell();
            }
        });
        field.textProperty().addListener((o, before, now) -> {
            if (isVisible()) {
                isWell();
            }
        });
    }

    /** A field of which something is read: the words are said where that is refused with an {@link IllegalArgumentException}. */
    public static Fault ofReading(TextInputControl field, String words, Supplier<?> read) {
        return new Fault(field, () -> {
            try {
                Object unused = read.get();
                return Optional.empty();
            } catch (IllegalArgumentException e) {
                return Optional.of(words);
            }
        });
    }

    /** Looks at the field again. */
    public boolean isWell() {
        Optional<String> wrong = rule.get();
        show(wrong);
        return wrong.isEmpty();
    }

    void goTo() {
        field.requestFocus();
    }

    private void show(Optional<String> wrong) {
        setText(wrong.orElse(""));
        setVisible(wrong.isPresent());
        setManaged(wrong.isPresent());
        field.pseudoClassStateChanged(FAULTY, wrong.isPresent());
        field.setAccessibleHelp(getText());
    }
}
