package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.across.StatedFindings;
import org.toeline.desk.records.Records;
import org.toeline.desk.records.Settings;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;

/** Clips that were moved: noted while they were there, missed, looked for and found; and copies where the coach wants them. */
@ExtendWith(ApplicationExtension.class)
class MissingClipTest {

    @TempDir
    static Path folder;

    private Path own;
    private Path filmed;
    private Stage stage;
    private Screens screens;

    @Start
    void start(Stage stage) throws Exception {
        own = folder.resolve("desk-" + System.nanoTime());
        filmed = Files.createDirectories(own.resolve("filmed"));
        this.stage = stage;
        show(Settings.usual(own.resolve("ledger")));
        stage.show();
    }

    private void show(Settings settings) {
        screens = new Screens(own, settings);
        Scene scene = new Scene(screens.root(), 1540, 940);
        scene.getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        stage.setScene(scene);
    }

    private static void until(java.util.concurrent.Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private <T> T inLedger(Records.Question<T> work) throws Exception {
        CountDownLatch done = new CountDownLatch(1);
        List<T> answers = new java.util.concurrent.CopyOnWriteArrayList<>();
        screens.records().ask(work, answer -> {
            answers.add(answer);
            done.countDown();
        });
        assertThat(done.await(60, TimeUnit.SECONDS)).isTrue();
        return answers.get(0);
    }

    /** The sample lesson with its face-on clip where it can be moved from. */
    private int kept() throws Exception {
        Path document = Path.of("sample-media", "before", "before.lesson.json").toAbsolutePath();
        Lesson sample = LessonDocument.read(document);
        ClipMoment moment = sample.clips().get(View.FACE_ON);
        Path clip = Files.copy(document.resolveSibling(moment.clip()), filmed.resolve("one.mp4"));
        Lesson lesson = new Lesson(
                sample.playerName(),
                sample.recorded(),
                sample.sheet(),
                java.util.Map.of(View.FACE_ON, new ClipMoment(clip.toString(), moment.seconds())),
                sample.unfinished(),
                sample.words(),
                sample.kept());
        return inLedger(l ->
                l.takeIn(lesson, StatedFindings.of(lesson), Optional.empty()).lessonId());
    }

    private List<Take> takes(int lesson) throws Exception {
        return inLedger(l -> l.takes(lesson));
    }

    private void open(FxRobot robot, int lesson) throws Exception {
        robot.interact(() -> screens.sheet().desk().open(lesson));
        until(() -> screens.records().lessonId().equals(java.util.OptionalInt.of(lesson)));
    }

    private Path frame(int lesson) throws Exception {
        String identity = inLedger(l -> l.lesson(lesson).orElseThrow().identity());
        return Stills.folder(new LedgerPlace.Folder(own.resolve("ledger")), identity)
                .resolve("frame-face-on.jpg");
    }

    /** Decoded frames would stay in memory from test to test. */
    @AfterEach
    void closeDesk() {
        Platform.runLater(screens::close);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void aMovedClipIsMissedLookedForAndFound(FxRobot robot) throws Exception {
        int lesson = kept();
        open(robot, lesson);
        until(() -> screens.sheet().clips().frame(View.FACE_ON).isPresent());
        until(() -> takes(lesson).get(0).fingerprint().isPresent());
        robot.interact(() -> screens.sheet().desk().fresh());
        until(() -> Files.exists(frame(lesson)));
        assertThat(own.resolve("ledger/media")).as("the clip stays where it is").doesNotExist();

        Path elsewhere = Files.createDirectories(own.resolve("shelf/old"));
        Files.move(filmed.resolve("one.mp4"), elsewhere.resolve("renamed.mp4"));
        open(robot, lesson);
        until(() -> robot.lookup("#missing-clip").query().isVisible()
                && screens.sheet().missing().name(View.FACE_ON).isPresent());
        assertThat(robot.lookup("#missing-clip .label").queryAs(Label.class).getText())
                .contains("one.mp4");
        until(() ->
                ((org.toeline.desk.picture.PicturePane) robot.lookup("#picture").query()).picture() != null);
        assertThat(screens.sheet()
                        .model()
                        .sheet()
                        .view(View.FACE_ON)
                        .orElseThrow()
                        .marks())
                .isNotEmpty();

        robot.interact(() -> screens.sheet().missing().look(own.resolve("shelf")));
        until(() -> screens.sheet().clips().frame(View.FACE_ON).isPresent());
        assertThat(robot.lookup("#missing-clip").query().isVisible()).isFalse();
        until(() -> takes(lesson).get(0).path().endsWith("renamed.mp4")
                && takes(lesson).get(0).fingerprint().isPresent());
    }

    /** A frame counts as kept when it is written, not when that was tried: where there was no room, there may be some later. */
    @Test
    void aFrameThatCouldNotBeKeptIsKeptLater(FxRobot robot) throws Exception {
        int lesson = kept();
        Path inTheWay = Files.createFile(own.resolve("ledger").resolve("stills"));
        for (int time = 0; time < 2; time++) {
            open(robot, lesson);
            until(() -> screens.sheet().clips().shown(View.FACE_ON).isPresent());
            robot.interact(() -> screens.sheet().desk().fresh());
            if (time == 0) {
                until(() -> robot.lookup("#status")
                        .queryAs(Label.class)
                        .getText()
                        .contains(inTheWay.getFileName().toString()));
                Files.delete(inTheWay);
            }
        }
        until(() -> Files.exists(frame(lesson)));
    }

    @Test
    void aCopyStandsInWhereTheCoachWantsCopies(FxRobot robot) throws Exception {
        robot.interact(() -> {
            screens.close();
            show(Settings.usual(own.resolve("ledger")).withClips(Settings.Clips.COPY));
        });
        int lesson = kept();
        open(robot, lesson);
        until(() -> takes(lesson).get(0).fingerprint().isPresent());
        Path copy = own.resolve("ledger/media")
                .resolve(takes(lesson).get(0).fingerprint().orElseThrow().sha256() + ".mp4");
        assertThat(copy).exists();
        robot.interact(() -> screens.sheet().desk().fresh());
        Files.delete(filmed.resolve("one.mp4"));
        open(robot, lesson);
        until(() -> screens.sheet().clips().file(View.FACE_ON).equals(Optional.of(copy)));
    }

    /** The file is there, and is nothing that the document may open: it is not said to have gone. */
    @Test
    void aClipThatLiesElsewhereIsNotSaidToBeGone(FxRobot robot) throws Exception {
        Path document = Files.createDirectories(own.resolve("mail")).resolve("other.lesson.json");
        Path clip = Files.copy(Path.of("sample-media/before/face-on.mp4"), filmed.resolve("outside.mp4"));
        Lesson sample = LessonDocument.read(Path.of("sample-media/before/before.lesson.json"));
        LessonDocument.write(sample.withMoment(View.FACE_ON, m -> m.moved(clip.toString())), document);
        robot.interact(() -> screens.sheet().desk().open(document));
        until(() -> robot.lookup("#missing-clip").query().isVisible());
        assertThat(robot.lookup("#missing-clip .label").queryAs(Label.class).getText())
                .contains("outside.mp4 is not beside this document");
        assertThat(screens.sheet().clips().frame(View.FACE_ON)).isEmpty();
    }
}
