package org.toeline.desk.players;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.across.StatedFindings;
import org.toeline.desk.StudioForTests;
import org.toeline.desk.players.Thumbnails.Thumb;
import org.toeline.desk.records.AddressFrames;
import org.toeline.desk.records.Settings;
import org.toeline.ledger.BesideDocument;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** Small pictures of lessons: out of the clip, else of what was kept of it, else none, and said to be none. */
@ExtendWith(ApplicationExtension.class)
class ThumbnailsTest {

    private static final Path SAMPLE = Path.of("sample-media", "before", "before.lesson.json");
    /** Of a colour after it was kept as a JPEG and made small. */
    private static final double NEARLY = 0.1;

    @TempDir
    Path folder;

    private StudioForTests studio;
    private Thumbnails thumbnails;

    @Start
    void start(Stage stage) {
        stage.show();
    }

    @BeforeEach
    void desk() {
        studio = new StudioForTests(folder, said -> {});
        thumbnails = new Thumbnails(studio.records(), studio.studio().background());
    }

    @AfterEach
    void close() {
        studio.close();
    }

    private KeptLesson keep(Lesson lesson) throws Exception {
        try (Ledger ledger = Ledger.open(Settings.usual(folder).place(), "the test")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("D. Walker"), Handedness.RIGHT));
            return ledger.keep(player.id(), lesson, StatedFindings.of(lesson));
        }
    }

    private Thumb looked(FxRobot robot, int lesson) throws Exception {
        ReadOnlyObjectProperty<?>[] of = new ReadOnlyObjectProperty<?>[1];
        robot.interact(() -> of[0] = thumbnails.of(lesson));
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, () -> ((Thumb) of[0].get()).looked());
        return (Thumb) of[0].get();
    }

    @Test
    void theMarkedFrameIsShownOutOfTheClip(FxRobot robot) throws Exception {
        KeptLesson kept = keep(BesideDocument.absolute(LessonDocument.read(SAMPLE), SAMPLE.toAbsolutePath()));
        Thumb thumb = looked(robot, kept.id());
        assertThat(thumb.picture()).isPresent();
        assertThat(thumb.picture().get().getWidth()).isEqualTo(Thumbnails.WIDTH);
        assertThat(thumb.picture().get().getHeight()).isBetween(Thumbnails.HEIGHT - 5.0, (double) Thumbnails.HEIGHT);
        robot.interact(thumbnails::renew);
        assertThat(looked(robot, kept.id()).picture().get())
                .as("held while the lesson is the same")
                .isSameAs(thumb.picture().get());
    }

    @Test
    void withoutTheClipWhatWasKeptOfItIsShown(FxRobot robot) throws Exception {
        KeptLesson kept = keep(BesideDocument.absolute(LessonDocument.read(SAMPLE), folder.resolve("gone.json")));
        BufferedImage frame = new BufferedImage(1280, 720, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = frame.createGraphics();
        g.setColor(Color.ORANGE);
        g.fillRect(0, 0, 1280, 720);
        g.dispose();
        AddressFrames.write(Settings.usual(folder).folder(), kept.identity(), View.FACE_ON, frame);
        javafx.scene.paint.Color seen = looked(robot, kept.id())
                .picture()
                .orElseThrow()
                .getPixelReader()
                .getColor(30, 20);
        assertThat(seen.getRed()).isGreaterThan(1 - NEARLY);
        assertThat(seen.getBlue()).isLessThan(NEARLY);
    }

    @Test
    void whereNothingIsLeftNothingIsShown(FxRobot robot) throws Exception {
        KeptLesson kept = keep(BesideDocument.absolute(LessonDocument.read(SAMPLE), folder.resolve("gone.json")));
        assertThat(looked(robot, kept.id()).picture()).isEmpty();
    }
}
