package org.toeline.desk.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import java.util.prefs.Preferences;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;

/** Property: every act has a key of its own, and what the coach chose is kept. */
class KeyBookTest {

    private static KeyEvent press(KeyCode code, boolean shift) {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false);
    }

    @Test
    void keysAreFoundChangedAndKept() throws Exception {
        Preferences own = Preferences.userRoot().node("toeline-test-" + UUID.randomUUID());
        try {
            KeyBook book = new KeyBook(own);
            Set<KeyCombination> all = new HashSet<>();
            for (Act act : Act.values()) {
                assertThat(all.add(book.key(act)))
                        .as(act + " has a key of its own")
                        .isTrue();
            }
            assertThat(book.asked(press(KeyCode.G, false))).contains(Act.SUGGEST);
            assertThat(book.asked(press(KeyCode.ENTER, true))).contains(Act.ACCEPT_ALL);
            assertThat(book.asked(press(KeyCode.LEFT, true))).contains(Act.LEFT_FAR);
            assertThat(book.asked(press(KeyCode.Q, false))).isEmpty();
            assertThat(book.give(Act.SUGGEST, KeyCombination.valueOf("S")))
                    .as("taken")
                    .isFalse();
            assertThat(book.give(Act.SUGGEST, KeyCombination.valueOf("Q"))).isTrue();
            KeyBook again = new KeyBook(own);
            assertThat(again.asked(press(KeyCode.Q, false))).contains(Act.SUGGEST);
            again.restore();
            assertThat(new KeyBook(own).asked(press(KeyCode.G, false))).contains(Act.SUGGEST);
        } finally {
            own.removeNode();
        }
    }
}
