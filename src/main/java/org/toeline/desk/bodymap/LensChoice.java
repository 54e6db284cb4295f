package org.toeline.desk.bodymap;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.control.ChoiceBox;
import javafx.util.StringConverter;
import org.toeline.camera.UsualLens;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.LensBook.Profile;
import org.toeline.mark.LensNote;
import org.toeline.mark.ViewMarks;

/** The lens of one view: a usual one, or one that was calibrated. */
final class LensChoice extends ChoiceBox<LensChoice.Choice> {

    /** A name with what it says of the lens. */
    record Choice(String name, LensNote lens) {}

    LensChoice(ViewMarks view, List<Profile> profiles) {
        List<Choice> choices = new ArrayList<>();
        for (UsualLens usual : UsualLens.values()) {
            choices.add(new Choice(Texts.of("lens." + usual.id()), note(usual, view)));
        }
        for (Profile profile : profiles) {
            profile.on(view.widthPx(), view.heightPx())
                    .ifPresent(lens -> choices.add(new Choice(profile.name(), lens)));
        }
        Choice now = choices.stream()
                .filter(c -> c.lens.equals(view.lens()))
                .findFirst()
                .orElseGet(() -> new Choice(Texts.of("lens.as-stated"), view.lens()));
        if (!choices.contains(now)) {
            choices.add(now);
        }
        getItems().setAll(choices);
        setValue(now);
        setId("lens-" + view.view().id());
        setAccessibleText(Texts.of("known.lens", Texts.of("view." + view.view().id())));
        setConverter(new StringConverter<>() {
            @Override
            public String toString(Choice choice) {
                return choice == null ? "" : choice.name;
            }

            @Override
            public Choice fromString(String name) {
                return getItems().stream()
                        .filter(c -> c.name.equals(name))
                        .findFirst()
                        .orElseThrow();
            }
        });
    }

    private static LensNote note(UsualLens usual, ViewMarks view) {
        if (usual == UsualLens.MAIN) {
            return LensNote.NONE;
        }
        double focal = usual.focalPx(view.widthPx(), view.heightPx());
        return new LensNote(
                OptionalDouble.of(focal),
                OptionalDouble.of(focal * usual.logSigma()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
