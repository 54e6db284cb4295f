package org.toeline.desk.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.assist.learn.Correction.Kind;
import org.toeline.assist.learn.CorrectionBook;
import org.toeline.assist.learn.Shown;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/** The document of the coach's corrections: kept, damaged, of two windows, forgotten. */
class OwnCorrectionsTest {

    private static final Mark NECK = new Mark(Landmark.NECK, new ImagePoint(800, 300), 11.5, Mark.Origin.SUGGESTED);

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void somewhere() {
        file = folder.resolve("corrections.json");
    }

    private static CorrectionBook one(CorrectionBook book) {
        return new Shown(View.FACE_ON, NECK, NECK, 500, Handedness.RIGHT)
                .onto(book, Mark.placed(Landmark.NECK, new ImagePoint(808, 296), 2), Shown.Look.OTHERWISE);
    }

    private static int count(OwnCorrections own) {
        return own.book()
                .of(View.FACE_ON, Landmark.NECK)
                .map(c -> c.count(Kind.MOVED))
                .orElse(0);
    }

    @Test
    void isThereAtTheNextStart() throws IOException {
        OwnCorrections own = new OwnCorrections(file);
        assertThat(own.add(OwnCorrectionsTest::one)).isEmpty();
        assertThat(own.add(OwnCorrectionsTest::one)).isEmpty();
        OwnCorrections later = new OwnCorrections(file);
        assertThat(later.remark()).isEmpty();
        assertThat(count(later)).isEqualTo(2);
    }

    @Test
    void oneThatCannotBeReadIsSetAsideAndSaid() throws IOException {
        Files.writeString(file, "{\"format\":\"toeline-corrections\",\"version\":1,\"landm");
        OwnCorrections own = new OwnCorrections(file);
        assertThat(own.remark()).contains("corrections.json").contains("moved to");
        assertThat(own.book()).isEqualTo(CorrectionBook.EMPTY);
        assertThat(folder.resolve("corrections.json.unreadable")).exists();
        own.add(OwnCorrectionsTest::one);
        assertThat(count(new OwnCorrections(file))).isEqualTo(1);
    }

    /** Also when that happens while the program is open. */
    @Test
    void oneThatIsDamagedMeanwhileIsNotWrittenOver() throws IOException {
        OwnCorrections own = new OwnCorrections(file);
        own.add(OwnCorrectionsTest::one);
        Files.writeString(file, "[]");
        assertThat(own.add(OwnCorrectionsTest::one)).contains("moved to");
        assertThat(folder.resolve("corrections.json.unreadable")).hasContent("[]");
        assertThat(count(own)).isEqualTo(1);
    }

    @Test
    void whatTwoWindowsAddIsAllKept() throws IOException {
        OwnCorrections one = new OwnCorrections(file);
        OwnCorrections other = new OwnCorrections(file);
        for (int i = 0; i < 3; i++) {
            one.add(OwnCorrectionsTest::one);
            other.add(OwnCorrectionsTest::one);
        }
        assertThat(count(new OwnCorrections(file))).isEqualTo(6);
    }

    @Test
    void whatCannotBeWrittenCountsUntilTheEnd() throws IOException {
        Files.writeString(folder.resolve("taken"), "a file where a folder would be");
        OwnCorrections own = new OwnCorrections(folder.resolve("taken").resolve("corrections.json"));
        assertThatThrownBy(() -> own.add(OwnCorrectionsTest::one)).isInstanceOf(IOException.class);
        assertThat(count(own)).isEqualTo(1);
    }

    @Test
    void forgottenIsForgotten() throws IOException {
        OwnCorrections own = new OwnCorrections(file);
        own.add(OwnCorrectionsTest::one);
        own.forget();
        assertThat(own.book()).isEqualTo(CorrectionBook.EMPTY);
        assertThat(folder).isEmptyDirectory();
        own.forget();
    }
}
