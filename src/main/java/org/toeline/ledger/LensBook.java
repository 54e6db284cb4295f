package org.toeline.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.document.Json;
import org.toeline.document.OwnDocument;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;
import org.toeline.mark.LensNote;

/**
 * The lenses that were calibrated, by name, in one small JSON file ({@code lenses.json}): calibrated once, used for every
 * clip of that phone. One writer at a time.
 */
public final class LensBook {

    private static final Sentences SENTENCES = Sentences.of(LensBook.class);
    /** Pictures whose sides are in one proportion to this are of one kind. */
    private static final double SAME_SHAPE = 0.01;

    /**
     * A lens as it was calibrated.
     *
     * @param widthPx  width of the pictures it was calibrated with, pixels
     * @param heightPx their height
     */
    public record Profile(String name, int widthPx, int heightPx, LensNote lens) {

        public Profile {
            if (name.isBlank() || name.length() > 100) {
                throw new IllegalArgumentException(SENTENCES.of("lenses.name"));
            }
        }

        /**
         * This lens for a picture of another size, larger or smaller or turned by a quarter; empty when its sides are in
         * another proportion, since then it was cropped in a way nobody can know.
         */
        public Optional<LensNote> on(int width, int height) {
            boolean turned = (width > height) != (widthPx > heightPx);
            double w = turned ? heightPx : widthPx;
            double h = turned ? widthPx : heightPx;
            double scale = width / w;
            if (Math.abs(height / h / scale - 1) > SAME_SHAPE) {
                return Optional.empty();
            }
            // which way it was turned is not known: turned, the principal point is taken for the middle
            OptionalDouble cx = turned ? OptionalDouble.empty() : scaled(lens.cxPx(), scale);
            OptionalDouble cy = turned ? OptionalDouble.empty() : scaled(lens.cyPx(), scale);
            return Optional.of(new LensNote(
                    scaled(lens.focalPx(), scale), scaled(lens.focalSigmaPx(), scale), cx, cy, lens.k1(), lens.k2()));
        }

        private static OptionalDouble scaled(OptionalDouble value, double scale) {
            return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * scale) : value;
        }
    }

    private final Path file;

    public LensBook(Path file) {
        this.file = file;
    }

    /** Those that are kept; one that cannot be read is set aside, and there are none. */
    public OwnDocument.Read<List<Profile>> profiles() {
        return OwnDocument.read(file, List.of(), LensBook::profiles);
    }

    private static List<Profile> profiles(byte[] bytes) throws IOException {
        JsonNode tree = Json.read(bytes);
        if (!tree.path("format").asText().equals("toeline-lenses")) {
            throw new IllegalArgumentException(SENTENCES.of("lenses.format"));
        }
        List<Profile> found = new ArrayList<>();
        for (JsonNode node : tree.path("lenses")) {
            found.add(profile(node));
        }
        return List.copyOf(found);
    }

    private static Profile profile(JsonNode node) {
        return new Profile(
                node.path("name").asText(),
                node.path("width").asInt(),
                node.path("height").asInt(),
                LessonReader.lens(node.path("lens")));
    }

    /**
     * Adds a lens, in place of one of its name.
     *
     * @return one sentence about what was set aside, empty when all is well
     */
    public String keep(Profile profile) throws DocumentException {
        ObjectNode out = Json.object().put("format", "toeline-lenses").put("version", 1);
        ArrayNode list = out.putArray("lenses");
        OwnDocument.Read<List<Profile>> before = profiles();
        for (Profile other : before.value()) {
            if (!other.name.equals(profile.name)) {
                list.add(node(other));
            }
        }
        list.add(node(profile));
        try {
            WholeFile.write(file, Json.bytes(out));
            return before.remark();
        } catch (IOException e) {
            throw new DocumentException(SENTENCES.of("lenses.not-kept", file, OwnDocument.reason(e)));
        }
    }

    private static ObjectNode node(Profile profile) {
        ObjectNode node = Json.object()
                .put("name", profile.name)
                .put("width", profile.widthPx)
                .put("height", profile.heightPx);
        LessonWriter.lens(profile.lens, node.putObject("lens"));
        return node;
    }
}
