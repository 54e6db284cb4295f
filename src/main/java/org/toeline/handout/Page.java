package org.toeline.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.FindingWords;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.advice.page.Part;
import org.toeline.advice.page.PlayerWords;
import org.toeline.posture.Doubt;
import org.toeline.posture.Source;

/**
 * What the player's page says, section by section; PDF and HTML lay out the same. Nothing is said twice.
 *
 * @param title    what the document is called
 * @param who      whose it is, with which club, and when
 * @param headline the one thing to do, or that there is none
 * @param lead     what is so and how sure it is
 * @param small    the figures behind it; may be empty
 * @param beside   what stands beside the still
 * @param below    the rest
 */
record Page(
        String title,
        String who,
        String headline,
        String lead,
        String small,
        List<Section> beside,
        List<Section> below) {

    Page {
        title = Plain.line(title);
        who = Plain.line(who);
        beside = List.copyOf(beside);
        below = List.copyOf(below);
    }

    /**
     * A heading and its paragraphs.
     *
     * @param part what it is, the same in every language; plain ASCII
     */
    record Section(String part, String heading, List<String> paragraphs) {

        Section {
            heading = Plain.line(heading);
            paragraphs = paragraphs.stream()
                    .map(Plain::line)
                    .filter(p -> !p.isEmpty())
                    .toList();
        }
    }

    /**
     * With what became of it since an earlier lesson on top, and what is first now after it.
     *
     * @param next whether there is something to change now
     */
    Page compared(String said, boolean next, Words words) {
        String now = next ? words.text("compare.next", headline) : headline + ".";
        return new Page(title, who, said, now + " " + lead, small, beside, below);
    }

    static Page of(Assessment assessment, Words words, String who, String coachsWords, String contact) {
        Draft draft = new Draft(assessment, words);
        if (!Plain.line(coachsWords).isEmpty()) {
            draft.beside.add(new Section(
                    "coach",
                    words.text("handout.coach"),
                    Plain.text(coachsWords).lines().toList()));
        }
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            draft.first(first.get());
        } else {
            draft.nothing();
        }
        draft.last();
        if (!Plain.line(contact).isEmpty()) {
            draft.below.add(new Section("contact", words.text("handout.contact"), List.of(contact)));
        }
        return draft.page(who);
    }

    /** A page being composed. */
    private static final class Draft {

        private final Assessment assessment;
        private final Advice advice;
        private final Words words;
        private final PlayerWords player;
        private final List<Section> beside = new ArrayList<>();
        private final List<Section> below = new ArrayList<>();
        private String headline = "";
        private String lead = "";
        private String small = "";

        private Draft(Assessment assessment, Words words) {
            this.assessment = assessment;
            this.advice = assessment.advice();
            this.words = words;
            this.player = PlayerWords.of(words, assessment);
        }

        private Page page(String who) {
            String title = words.text("handout.title");
            return new Page(who.isEmpty() ? title : title + " – " + who, who, headline, lead, small, beside, below);
        }

        private void first(FirstThing first) {
            Finding finding = first.finding();
            headline = player.instruction(finding);
            lead = player.fault(finding) + ". " + player.sure(finding) + ".";
            small = Words.sentenceCase(player.small(finding)) + ".";
            List<String> why =
                    new ArrayList<>(List.of(player.say(Part.WHY, finding), player.say(Part.FLIGHT, finding)));
            List<String> follow =
                    player.mayFollow(first).stream().map(player::fault).toList();
            if (!follow.isEmpty()) {
                why.add(words.text("handout.may-follow", String.join(". ", follow)));
            }
            section(beside, "why", why);
            section(beside, "check", List.of(player.say(Part.CHECK, finding)));
            section(beside, "drill", List.of(player.say(Part.DRILL, finding)));
            section(beside, "feel", List.of(player.say(Part.FEEL, finding)));
            List<String> next = player.nextTime().stream()
                    .map(f -> player.fault(f) + ". " + player.instruction(f))
                    .toList();
            section(below, "next", next);
            good(below);
            untold(below);
        }

        private void nothing() {
            headline = new FindingWords(words).nothing(advice);
            if (!advice.isJudged()) {
                lead = new FindingWords(words).unjudged(advice);
                return;
            }
            lead = words.text(advice.allInRange() ? "handout.keep" : "handout.keep.unsure");
            good(beside);
            untold(beside);
        }

        private void last() {
            section(below, "measured", List.of(words.text("handout.measured")));
            section(below, "cautions", List.of(words.text("handout.cautions")));
        }

        private void section(List<Section> where, String part, List<String> paragraphs) {
            if (!paragraphs.isEmpty()) {
                where.add(new Section(part, words.text(heading(part)), paragraphs));
            }
        }

        private static String heading(String part) {
            return switch (part) {
                case "measured", "cautions" -> "handout." + part + ".heading";
                default -> "handout." + part;
            };
        }

        private void good(List<Section> where) {
            List<String> names = named(f -> f.verdict().equals(Optional.of(Verdict.IN_RANGE)));
            section(
                    where,
                    "good",
                    List.of(
                            names.isEmpty()
                                    ? words.text("handout.none.good")
                                    : words.text("handout.good.lead", words.list(names))));
        }

        /** What is too close to call in one paragraph, what cannot be told by the reason, marks that do not fit. */
        private void untold(List<Section> where) {
            List<String> text = new ArrayList<>();
            List<String> close = named(f -> f.verdict().equals(Optional.of(Verdict.TOO_CLOSE)));
            if (!close.isEmpty()) {
                text.add(Words.sentenceCase(words.text(
                        close.size() == 1 ? "handout.untold.too-close.one" : "handout.untold.too-close",
                        words.list(close))));
            }
            Map<Source, List<String>> unseen = new LinkedHashMap<>();
            advice.findings().stream()
                    .filter(f -> f.verdict().equals(Optional.of(Verdict.CANNOT_TELL)))
                    .forEach(f -> unseen.computeIfAbsent(f.reading().dominatedBy(), s -> new ArrayList<>())
                            .add(inSentence(f)));
            unseen.forEach((source, names) -> text.add(Words.sentenceCase(
                    words.text("handout.untold.cannot-tell", words.list(names), words.unsure(source)))));
            assessment.posture().doubts().stream()
                    .filter(Doubt::moves)
                    .map(d -> words.text("handout.doubt", words.name(d.view())))
                    .distinct()
                    .forEach(text::add);
            section(where, "untold", text);
        }

        private List<String> named(Predicate<Finding> which) {
            return advice.findings().stream()
                    .filter(which)
                    .map(this::inSentence)
                    .toList();
        }

        private String inSentence(Finding finding) {
            return player.nameInSentence(finding.kind());
        }
    }
}
