package org.toeline.desk.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

/**
 * A straight apostrophe quotes in what is filled in ({@link java.text.MessageFormat}) and stands for itself elsewhere: two in a
 * row would be seen. The program writes ’.
 */
final class TextsTest {

    @Test
    void apostrophesAreTypographic() {
        ResourceBundle words = ResourceBundle.getBundle("org.toeline.desk.desk", Locale.ROOT);
        assertThat(words.keySet()).hasSizeGreaterThan(100);
        for (String key : words.keySet()) {
            assertThat(words.getString(key)).as(key).doesNotContain("'");
        }
    }
}
