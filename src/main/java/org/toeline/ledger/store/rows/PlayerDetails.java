package org.toeline.ledger.store.rows;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;
import org.toeline.mark.Handedness;

/**
 * What the coach wrote of a player. Everything but the handedness may be left out, the name too.
 *
 * @param heightM standing height, metres, above 0 and below 3
 * @param bornYear year of birth, 1900 to 2200
 */
public record PlayerDetails(
        Optional<String> name, Handedness handedness, OptionalDouble heightM, OptionalInt bornYear, String note) {

    public PlayerDetails {
        name = cleaned(name);
        note = storable(note);
        heightM.ifPresent(h -> {
            Finite.requirePositive(h, "heightM");
            if (h >= 3) {
                throw new IllegalArgumentException(
                        Sentences.of(PlayerDetails.class).of("player.height", h));
            }
        });
        bornYear.ifPresent(y -> {
            if (y < 1900 || y > 2200) {
                throw new IllegalArgumentException(
                        Sentences.of(PlayerDetails.class).of("player.born", y));
            }
        });
    }

    /** A name as it is kept: without blanks around it, and none when nothing else is in it. */
    static Optional<String> cleaned(Optional<String> name) {
        return name.map(n -> storable(n).strip()).filter(n -> !n.isEmpty());
    }

    /** No database column holds the character 0; documents write it as an escape and keep it. */
    static String storable(String text) {
        return text.replace("\0", "");
    }

    public static PlayerDetails of(Optional<String> name, Handedness handedness) {
        return new PlayerDetails(name, handedness, OptionalDouble.empty(), OptionalInt.empty(), "");
    }

    public PlayerDetails withName(Optional<String> changed) {
        return new PlayerDetails(changed, handedness, heightM, bornYear, note);
    }

    public PlayerDetails withHeightM(OptionalDouble changed) {
        return new PlayerDetails(name, handedness, changed, bornYear, note);
    }

    public PlayerDetails withBornYear(OptionalInt changed) {
        return new PlayerDetails(name, handedness, heightM, changed, note);
    }

    public PlayerDetails withNote(String changed) {
        return new PlayerDetails(name, handedness, heightM, bornYear, changed);
    }

    /** With what is missing here as it is there, and the other's note below this one's, where it says something else. */
    PlayerDetails filledFrom(PlayerDetails other) {
        String both = note.isBlank() || note.contains(other.note) ? note : note + "\n" + other.note;
        return new PlayerDetails(
                name.or(() -> other.name),
                handedness,
                heightM.isPresent() ? heightM : other.heightM,
                bornYear.isPresent() ? bornYear : other.bornYear,
                note.isBlank() ? other.note : both);
    }
}
