package org.toeline.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnDocumentTest {

    @TempDir
    private Path folder;

    private OwnDocument.Read<String> read(Path file) {
        return OwnDocument.read(file, "usual", bytes -> {
            JsonNode tree = Json.read(bytes);
            if (!tree.path("format").asText().equals("ours")) {
                throw new IllegalArgumentException("the format “ours” is needed");
            }
            return tree.path("value").asText();
        });
    }

    @Test
    void noneIsNothingToSay() {
        assertThat(read(folder.resolve("a.json"))).isEqualTo(new OwnDocument.Read<>("usual", ""));
    }

    @Test
    void oneThatCanBeReadStays() throws Exception {
        Path file = folder.resolve("a.json");
        WholeFile.write(file, Json.bytes(Json.object().put("format", "ours").put("value", "mine")));
        assertThat(read(file)).isEqualTo(new OwnDocument.Read<>("mine", ""));
        assertThat(folder).isDirectoryContaining("glob:**/a.json").isDirectoryNotContaining("glob:**.part");
    }

    /** Each under a name of its own, none replaced by the next, said once. */
    @Test
    void everyOneThatCannotBeReadIsKeptAside() throws Exception {
        Path file = folder.resolve("a.json");
        byte[] whole = Json.bytes(Json.object().put("format", "ours").put("value", "mine"));
        List<byte[]> broken = new ArrayList<>();
        for (int cut = 0; cut < whole.length - 2; cut += 3) {
            broken.add(java.util.Arrays.copyOf(whole, cut));
        }
        broken.add("{\"format\":\"other\"}".getBytes(StandardCharsets.UTF_8));
        broken.add(new byte[Json.MOST_BYTES + 1]);
        for (byte[] bytes : broken) {
            Files.write(file, bytes);
            OwnDocument.Read<String> read = read(file);
            assertThat(read.value()).isEqualTo("usual");
            assertThat(read.remark()).contains(file.toString()).contains("a.json.unreadable");
            assertThat(file).doesNotExist();
            assertThat(read(file).remark()).as("said once").isEmpty();
        }
        for (int i = 0; i < broken.size(); i++) {
            assertThat(folder.resolve("a.json.unreadable" + (i == 0 ? "" : "-" + (i + 1))))
                    .hasBinaryContent(broken.get(i));
        }
    }
}
