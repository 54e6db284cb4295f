package org.toeline.desk.handover;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.toeline.advice.Phrases;
import org.toeline.desk.text.Texts;
import org.toeline.handout.PhraseFile;

/** The coach's own phrases, kept as they are changed. */
final class OwnWords {

    private final Path file;
    private final Consumer<String> say;
    private Phrases phrases;

    OwnWords(Path file, Consumer<String> say) {
        this.file = file;
        this.say = say;
        Phrases.Read read = PhraseFile.read(file);
        phrases = read.phrases();
        if (!read.said().isEmpty()) {
            say.accept(String.join(" ", read.said()));
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
            PhraseFile.write(file, changed).ifPresent(aside -> say.accept(Texts.of("hand-over.phrases-aside", aside)));
        } catch (IOException e) {
            say.accept(Texts.of("hand-over.phrases-not-kept", file, String.valueOf(e.getMessage())));
        }
    }
}
