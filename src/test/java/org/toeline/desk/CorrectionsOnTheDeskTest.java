package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.assist.learn.Correction.Kind;
import org.toeline.assist.learn.CorrectionBook;
import org.toeline.assist.learn.SomeCorrections;
import org.toeline.desk.lesson.Item;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/** From a clip that arrives to the next one: what the coach drags there is learnt, and the next is suggested by it. */
class CorrectionsOnTheDeskTest extends DrivenDesk {

    private static final Path CLIP =
            Path.of("sample-media", "before", "face-on.mp4").toAbsolutePath();
    private static final Landmark HIP = Landmark.LEAD_HIP;
    private static final Landmark KNEE = Landmark.LEAD_KNEE;
    private static final double OFF_PX = 7;

    private boolean closed;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    @Override
    @AfterEach
    void closeDesk() {
        if (!closed) {
            super.closeDesk();
        }
    }

    private Optional<Mark> suggested(Landmark landmark) {
        return model().marks(View.FACE_ON)
                .flatMap(v -> v.mark(landmark))
                .filter(m -> m.origin() == Mark.Origin.SUGGESTED);
    }

    private Mark arrive(FxRobot robot) throws Exception {
        robot.interact(() -> {
            sheet.welcomed();
            sheet.desk().fresh();
        });
        until(() -> model().sheet().views().isEmpty());
        robot.interact(() -> sheet.clips().choose(View.FACE_ON, CLIP));
        until(() -> sheet.clips().time(View.FACE_ON).filter(t -> t[0] > 1.0).isPresent()
                && sheet.clips().shown(View.FACE_ON).isPresent()
                && model().marks(View.FACE_ON).isPresent());
        robot.type(KeyCode.G);
        until(() -> suggested(HIP).isPresent());
        return suggested(HIP).orElseThrow();
    }

    private void drag(FxRobot robot) {
        ImagePoint to = suggested(HIP).orElseThrow().at().plus(OFF_PX, 0);
        robot.interact(() -> {
            model().select(new Item.OfLandmark(HIP));
            model().grab();
            model().drag(to);
            model().release();
        });
    }

    private static int count(Landmark landmark, Kind kind) throws IOException {
        Path file = folder.resolve("corrections.json");
        return Files.exists(file)
                ? CorrectionBook.of(Files.readAllBytes(file))
                        .of(View.FACE_ON, landmark)
                        .map(c -> c.count(kind))
                        .orElse(0)
                : 0;
    }

    @Test
    void whatIsDraggedInOneLessonMovesWhatIsSuggestedInAnother(FxRobot robot) throws Exception {
        Mark first = arrive(robot);
        drag(robot);
        robot.interact(() -> model().select(new Item.OfLandmark(KNEE)));
        robot.type(KeyCode.ENTER);
        assertThat(count(HIP, Kind.MOVED)).as("while it is on the desk").isZero();
        robot.interact(() -> sheet.desk().fresh());
        until(() -> model().sheet().views().isEmpty());
        assertThat(count(HIP, Kind.MOVED)).isEqualTo(1);
        assertThat(count(KNEE, Kind.AGREED)).isEqualTo(1);
        assertThat(count(Landmark.LEAD_TOE, Kind.AGREED)).isZero();

        robot.interact(() -> {
            try {
                sheet.assistant().learning().own().add(b -> SomeCorrections.of(List.of(HIP)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        int before = count(HIP, Kind.MOVED);
        Mark second = arrive(robot);
        double stated = first.sigmaPx();
        assertThat((second.at().xPx() - first.at().xPx()) / stated)
                .as("eleven that lie 0.9 spreads to the target")
                .isBetween(0.5, 0.8);
        assertThat(second.sigmaPx()).isLessThan(first.sigmaPx());
        drag(robot);
        robot.interact(screens::close);
        closed = true;
        assertThat(count(HIP, Kind.MOVED)).as("the program ends").isEqualTo(before + 1);
    }
}
