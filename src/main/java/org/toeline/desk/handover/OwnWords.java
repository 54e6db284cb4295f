package org.toeline.desk.handover;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.toeline.advice.Phrases;
import org.toeline.desk.text.Texts;
import org.toeline.document.OwnDocument;
import org.toeline.document.WholeFile;

/** The coach's own phrases, kept as they are changed. */
final class OwnWords {

    private final Path file;
    private final Consumer<String> say;
    private Phrases phrases;

    OwnWords(Path file, Consumer<String> say) {
        this.file = file;
        this.say = say;
        OwnDocument.Read<Phrases.Read> read = OwnDocument.read(
                file, new Phrases.Read(Phrases.NONE, List.of()), bytes -> Phrases.read(bytes, file.toString()));
        phrases = read.value().phrases();
        String remark = (read.remark() + " " + String.join(" ", read.value().said())).strip();
        if (!remark.isEmpty()) {
            say.accept(remark);
        }
    }

    Phrases phrases() {
        return phrases;
    }

    void keepSentence(String sentence) {
        if (!phrases.own().contains(sentence)) {
            List<String> all = new ArrayList<>(phrases.own());
            all.add(sentence);
            keep(phrases.withOwn(all));
        }
    }

    void keep(Phrases changed) {
        try {
            phrases = changed;
            WholeFile.write(file, changed.written());
        } catch (IOException e) {
            say.accept(Texts.of("hand-over.phrases-not-kept", file, String.valueOf(e.getMessage())));
        }
    }
}
