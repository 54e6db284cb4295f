package org.toeline.desk.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Property: what is shown in a field can be read back from it, whatever language the system speaks. */
class TypedNumberTest {

    private final Locale display = Locale.getDefault(Locale.Category.DISPLAY);
    private final Locale format = Locale.getDefault(Locale.Category.FORMAT);

    @BeforeEach
    @AfterEach
    void restore() {
        Locale.setDefault(Locale.Category.DISPLAY, display);
        Locale.setDefault(Locale.Category.FORMAT, format);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "de-CH", "ar-EG", "ar-EG-u-nu-arab", "fa-IR", "hi-IN-u-nu-deva", "sv-SE", "tr"})
    void whatIsShownIsReadBack(String tag) {
        Locale.setDefault(Locale.Category.DISPLAY, Locale.forLanguageTag(tag));
        Locale.setDefault(Locale.Category.FORMAT, Locale.forLanguageTag(tag));
        for (double value : new double[] {0, 1.25, -3.5, 178, -0.01}) {
            assertThat(TypedNumber.read(TypedNumber.shown(value, "0.##"))).hasValue(value);
        }
    }

    @Test
    void digitsOfAnyScriptAreTyped() {
        assertThat(TypedNumber.read("١٫٧٨")).hasValue(1.78);
        assertThat(TypedNumber.read("۱۷۸")).hasValue(178);
        assertThat(TypedNumber.read(" −1,5 ")).hasValue(-1.5);
        assertThat(TypedNumber.read("–1.5")).hasValue(-1.5);
        assertThat(TypedNumber.read("-1.5")).hasValue(-1.5);
        assertThat(TypedNumber.read("NaN")).isEmpty();
        assertThat(TypedNumber.read("1.7.8")).isEmpty();
        assertThat(TypedNumber.read("")).isEmpty();
    }
}
