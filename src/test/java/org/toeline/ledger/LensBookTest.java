package org.toeline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.document.OwnDocument;
import org.toeline.ledger.LensBook.Profile;
import org.toeline.mark.LensNote;

/** Property: what is kept comes back, for pictures of its shape and no others. */
class LensBookTest {

    @TempDir
    Path folder;

    private static Profile profile(String name, double focal) {
        return new Profile(
                name,
                1920,
                1080,
                new LensNote(
                        OptionalDouble.of(focal),
                        OptionalDouble.of(5),
                        OptionalDouble.of(965),
                        OptionalDouble.of(533),
                        OptionalDouble.of(-0.1),
                        OptionalDouble.of(0.02)));
    }

    @Test
    void keepsLensesByName() throws Exception {
        LensBook book = new LensBook(folder.resolve("new").resolve("lenses.json"));
        assertThat(book.profiles().value()).isEmpty();
        book.keep(profile("one", 1400));
        book.keep(profile("two", 1500));
        book.keep(profile("one", 1450));
        assertThat(book.profiles().value()).isEqualTo(List.of(profile("two", 1500), profile("one", 1450)));
    }

    @Test
    void scalesAndTurnsButDoesNotGuessACrop() {
        Profile lens = profile("one", 1400);
        LensNote large = lens.on(3840, 2160).orElseThrow();
        assertThat(large.focalPx().orElseThrow()).isCloseTo(2800, within(1e-9));
        assertThat(large.cxPx().orElseThrow()).isCloseTo(1930, within(1e-9));
        assertThat(large.k1()).isEqualTo(OptionalDouble.of(-0.1));
        LensNote portrait = lens.on(1080, 1920).orElseThrow();
        assertThat(portrait.focalPx().orElseThrow()).isCloseTo(1400, within(1e-9));
        assertThat(portrait.cxPx()).as("which way it was turned is not known").isEmpty();
        assertThat(lens.on(1440, 1080)).isEmpty();
    }

    @Test
    void setsAsideWhatItCannotReadUnderANameOfItsOwn() throws Exception {
        Path file = folder.resolve("lenses.json");
        List<String> broken =
                List.of("", "{", "[]", "{\"format\":\"other\"}", "{\"format\":\"toeline-lenses\",\"lenses\":[{}]}");
        for (int i = 0; i < broken.size(); i++) {
            Files.writeString(file, broken.get(i));
            LensBook book = new LensBook(file);
            assertThat(book.keep(profile("one", 1400))).as(broken.get(i)).contains("lenses.json.unreadable");
            Path aside = folder.resolve("lenses.json.unreadable" + (i == 0 ? "" : "-" + (i + 1)));
            assertThat(Files.readString(aside)).isEqualTo(broken.get(i));
            assertThat(book.profiles()).isEqualTo(new OwnDocument.Read<>(List.of(profile("one", 1400)), ""));
        }
    }
}
