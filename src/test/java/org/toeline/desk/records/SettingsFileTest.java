package org.toeline.desk.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.desk.look.Look;
import org.toeline.document.OwnDocument;
import org.toeline.ledger.store.place.LedgerPlace;

/** Property: settings that cannot be read are moved aside and said, and the usual ones are used. */
class SettingsFileTest {

    @TempDir
    private Path folder;

    private SettingsFile file;
    private Settings usual;

    @BeforeEach
    void place() {
        usual = Settings.usual(folder.resolve("ledger"));
        file = new SettingsFile(folder.resolve("settings.json"), usual);
    }

    @Test
    void comesBackAsItWasWritten() throws Exception {
        Settings changed = usual.withBay("Bay “2”")
                .withClips(Settings.Clips.COPY)
                .withFolder(folder.resolve("elsewhere"))
                .withLook(new Look(150, Look.Paper.DARK))
                .withServer(Optional.of(
                        new LedgerPlace.Server("jdbc:postgresql://localhost:5432/academy", "coach", "pä ss")));
        file.write(changed);
        OwnDocument.Read<Settings> read = file.read();
        assertThat(read.remark()).isEmpty();
        assertThat(read.value().place()).isEqualTo(changed.place());
        assertThat(read.value().bay()).isEqualTo("Bay “2”");
        assertThat(read.value().clips()).isEqualTo(Settings.Clips.COPY);
        assertThat(read.value().folder()).isEqualTo(changed.folder());
        assertThat(read.value().look()).isEqualTo(changed.look());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.file())))
                .as("it holds a password")
                .isEqualTo("rw-------");
    }

    @Test
    void aSizeThereIsNotIsTheUsualOne() throws Exception {
        Files.writeString(
                file.file(), "{\"format\": \"toeline-settings\", \"version\": 1, \"text\": 137, \"paper\": \"dark\"}");
        assertThat(file.read().value().look()).isEqualTo(new Look(100, Look.Paper.DARK));
    }

    @Test
    void keepsWhatItDoesNotKnow() throws Exception {
        Files.writeString(
                file.file(), "{\"format\": \"toeline-settings\", \"version\": 1, \"later\": {\"a\": [1, 2]}}");
        file.write(file.read().value().withBay("Bay 3"));
        assertThat(Files.readString(file.file())).contains("\"later\"").contains("Bay 3");
    }

    @Test
    void cutAtEveryByteItIsMovedAsideAndNothingIsLost() throws Exception {
        file.write(usual.withBay("Bay 2"));
        byte[] whole = Files.readAllBytes(file.file());
        for (int length = 0; length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            Files.write(file.file(), cut);
            OwnDocument.Read<Settings> read = file.read();
            if (new String(cut, StandardCharsets.UTF_8).strip().endsWith("}")
                    && read.remark().isEmpty()) {
                assertThat(length).as("only blanks are missing").isGreaterThan(whole.length - 3);
                continue;
            }
            assertThat(read.value()).as("cut after %d bytes", length).isEqualTo(usual);
            assertThat(read.remark())
                    .as("cut after %d bytes", length)
                    .contains("settings.json")
                    .contains("moved to");
            assertThat(file.file()).doesNotExist();
        }
        try (var aside = Files.list(folder)) {
            assertThat(aside.filter(f -> f.getFileName().toString().contains("unreadable"))
                            .count())
                    .as("every one of them is kept")
                    .isGreaterThan(whole.length - 5L);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "null",
                "[]",
                "7",
                "\"text\"",
                "{}",
                "{\"format\": \"toeline-lesson\"}",
                "{\"format\": \"toeline-settings\", \"bay\": 7}",
                "{\"format\": \"toeline-settings\", \"folder\": {}}",
                "{\"format\": \"toeline-settings\", \"bay\": \"\"}",
                "{\"format\": \"toeline-settings\", \"folder\": \"\\u0000\"}",
                "{\"format\": \"toeline-settings\", \"server\": {\"url\": \"http://a\", \"user\": \"b\"}}",
                "{\"format\": \"toeline-settings\"} {}",
                "{\"format\": NaN}",
                "{\"format\": 1e999}"
            })
    void whatIsNoneIsMovedAside(String text) throws Exception {
        Files.writeString(file.file(), text);
        OwnDocument.Read<Settings> read = file.read();
        assertThat(read.value()).isEqualTo(usual);
        assertThat(read.remark()).contains("moved to settings.json.unreadable");
        assertThat(Files.readString(folder.resolve("settings.json.unreadable"))).isEqualTo(text);
    }

    @Test
    void aHundredThousandBracketsDeepIsMovedAside() throws Exception {
        Files.writeString(file.file(), "[".repeat(100_000));
        assertThat(file.read().remark()).contains("moved to");
    }

    @Test
    void aBayNeedsAName() {
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> usual.withBay("  "));
    }
}
