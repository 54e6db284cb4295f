package org.toeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.toeline.reading.ReadingKind;

/** What may follow from what, and what that stands on. Immutable; any thread. */
public final class CauseWords {

    private final Words words;

    public CauseWords(Words words) {
        this.words = words;
    }

    /** What may follow from the first thing; empty when nothing else is out of range downstream of it. */
    public Optional<String> mayFollow(FirstThing first) {
        List<String> names = new ArrayList<>();
        for (ReadingKind kind : first.mayFollow()) {
            String name = words.name(kind);
            names.add(names.isEmpty() ? name : words.inSentence(name));
        }
        if (names.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(words.text(names.size() == 1 ? "mayfollow.one" : "mayfollow.many", words.list(names)));
    }

    /** Why an effect may follow from its cause, which is out of range that way where it is. */
    public String step(CauseChain.Link link, Optional<Verdict> out) {
        String step = "step." + Topic.of(link.cause()).id() + "."
                + Topic.of(link.effect()).id();
        return words.text(out.map(v -> step + "." + v.id()).filter(words::has).orElse(step));
    }

    /** What a step of the chain stands on, with its citation where it has one. */
    public String grounds(CauseChain.Link link) {
        String key = "grounds." + link.grounds().name().toLowerCase(Locale.ROOT).replace('_', '-');
        boolean alone = link.grounds() == CauseChain.Grounds.COMMON_PRACTICE
                && link.source().equals(Citations.COMMON);
        return alone ? words.text(key + ".alone") : words.text(key, Citations.in(words, link.source()));
    }
}
