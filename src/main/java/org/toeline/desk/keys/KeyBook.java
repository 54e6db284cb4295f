package org.toeline.desk.keys;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.prefs.Preferences;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Which key does what: the usual ones, and those the coach chose, which are kept. Two acts never have one key. */
public final class KeyBook {

    private final Preferences kept;
    private final Map<Act, KeyCombination> keys = new EnumMap<>(Act.class);

    public KeyBook(Preferences kept) {
        this.kept = kept;
        for (Act act : Act.values()) {
            keys.put(act, parsed(kept.get("key." + act.id(), act.usual())).orElse(KeyCombination.valueOf(act.usual())));
        }
    }

    private static Optional<KeyCombination> parsed(String text) {
        try {
            return Optional.of(KeyCombination.valueOf(text));
        } catch (IllegalArgumentException | NullPointerException e) {
            return Optional.empty();
        }
    }

    public KeyCombination key(Act act) {
        return Objects.requireNonNull(keys.get(act));
    }

    /** What a key press asks for. */
    public Optional<Act> asked(KeyEvent event) {
        return keys.entrySet().stream()
                .filter(e -> e.getValue().match(event))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** Who has a key already. */
    public Optional<Act> holder(KeyCombination key) {
        return keys.entrySet().stream()
                .filter(e -> e.getValue().equals(key))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** Gives an act another key; answers whether it was free. */
    public boolean give(Act act, KeyCombination key) {
        Optional<Act> holder = holder(key);
        if (holder.isPresent() && holder.get() != act) {
            return false;
        }
        keys.put(act, key);
        kept.put("key." + act.id(), key.getName());
        return true;
    }

    /** All keys as they were at first. */
    public void restore() {
        for (Act act : Act.values()) {
            keys.put(act, KeyCombination.valueOf(act.usual()));
            kept.remove("key." + act.id());
        }
    }
}
