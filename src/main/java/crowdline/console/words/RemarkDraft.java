package crowdline.console.words;

import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A remark as it is being typed; anything may stand in it.
 *
 * @param kind chosen kind
 * @param text what to say
 * @param shortText the shorter form, empty for none
 * @param weight how much it is wanted, as typed
 * @param at the moment it is tied to, in words, empty for the start of its figure
 * @param until the moment by which it must be over, in words, empty for none
 * @param earliestS earliest start in seconds against its figure or that moment, as typed, empty for none
 * @param latestS latest end in seconds against its figure or its moments, as typed, empty for none
 * @param once whether it is said once at most
 * @param speaker the name of who says it, empty for whoever is at the console
 * @param other the same in another language
 */
public record RemarkDraft(
        RemarkKind kind,
        String text,
        String shortText,
        String weight,
        String at,
        String until,
        String earliestS,
        String latestS,
        boolean once,
        String speaker,
        OtherDraft other) {

    /** Tied to no moment. */
    public RemarkDraft(
            RemarkKind kind,
            String text,
            String shortText,
            String weight,
            String earliestS,
            String latestS,
            boolean once) {
        this(kind, text, shortText, weight, "", "", earliestS, latestS, once, "", OtherDraft.NONE);
    }

    /**
     * What a draft amounts to.
     *
     * @param remark the remark; what cannot be used is left as it was
     * @param problems what cannot be used, a sentence each
     */
    record Reading(Remark remark, List<String> problems) {
        Reading {
            problems = List.copyOf(problems);
        }
    }

    static RemarkDraft of(Remark remark) {
        String shorter = remark.shortText();
        return new RemarkDraft(
                remark.kind(),
                remark.text(),
                shorter == null ? "" : shorter,
                number(remark.weight()),
                words(remark.at()),
                words(remark.until()),
                number(remark.earliestS()),
                number(remark.latestS()),
                remark.once(),
                Objects.requireNonNullElse(remark.speaker(), ""),
                OtherDraft.of(remark.translation()));
    }

    /** The same with an aside put into its text after that many letters, between commas if the sentence goes on. */
    RemarkDraft withAside(int at, String aside) {
        String after = text.substring(at);
        boolean goesOn =
                !after.isBlank() && Character.isLetterOrDigit(after.strip().codePointAt(0));
        String with = text.substring(0, at) + ", " + aside + (goesOn ? "," : "") + after;
        return new RemarkDraft(kind, with, shortText, weight, this.at, until, earliestS, latestS, once, speaker, other);
    }

    /**
     * What it amounts to: words somebody changed are a person's, not a first draft any more.
     *
     * @param before the remark as it was; what the draft does not say well stays as it is there
     */
    Reading read(Remark before) {
        List<String> problems = new ArrayList<>();
        String said = text;
        if (text.isBlank()) {
            problems.add("The text is empty, so the old one is kept until you write something.");
            said = before.text();
        }
        Double heavy = number("The weight", weight, problems);
        if (weight.isBlank() || (heavy != null && heavy <= 0)) {
            problems.add("The weight must be a number above 0; 1 is ordinary.");
            heavy = null;
        }
        Double earliest = earliestS.isBlank() ? null : number("The earliest start", earliestS, problems);
        Double latest = latestS.isBlank() ? null : number("The latest end", latestS, problems);
        boolean unread = (earliest == null && !earliestS.isBlank()) || (latest == null && !latestS.isBlank());
        if (until.isBlank() && earliest != null && latest != null && latest <= earliest) {
            problems.add("The latest end, " + latestS.strip() + " s, must come after the earliest start, "
                    + earliestS.strip() + " s.");
            unread = true;
        }
        try {
            Remark remark = new Remark(
                            before.id(),
                            kind,
                            said,
                            shortText.isBlank() ? null : shortText,
                            // Times that cannot be used stay with the moments they count from.
                            unread ? before.at() : moment(at),
                            unread ? before.until() : moment(until),
                            unread ? before.earliestS() : earliest,
                            unread ? before.latestS() : latest,
                            heavy == null ? before.weight() : heavy,
                            once,
                            before.draft(),
                            before.duty(),
                            speaker.isBlank() ? null : speaker,
                            other.read(before.translation(), problems))
                    .after(before);
            return new Reading(remark.equals(before) ? before : remark.withDraft(false), problems);
        } catch (IllegalArgumentException e) {
            problems.add("This remark cannot be used, so the old one is kept: " + e.getMessage() + ".");
            return new Reading(before, problems);
        }
    }

    /** They are chosen from a list, so that any words in it are those of a moment. */
    private static @Nullable MomentName moment(String words) {
        return MomentName.of(words).orElse(null);
    }

    private static String words(@Nullable MomentName moment) {
        return moment == null ? "" : moment.words();
    }

    private static @Nullable Double number(String what, String typed, List<String> problems) {
        String plain = typed.strip().replace('−', '-');
        if (plain.matches("[+-]?[0-9]{1,6}(\\.[0-9]{1,6})?")) {
            return Double.valueOf(plain);
        }
        if (!plain.isEmpty()) {
            problems.add(what + " is \"" + typed.strip() + "\"; it must be a number such as 2.5.");
        }
        return null;
    }

    private static String number(@Nullable Double value) {
        if (value == null) {
            return "";
        }
        return value == Math.rint(value) && Math.abs(value) < 1e6
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.valueOf(value);
    }

    /**
     * Names the step that typing on from another draft belongs to: typing on in one word of one field is one step, the
     * next word is another. Empty for what is always a step of its own.
     */
    String step(String id, RemarkDraft last) {
        if (!text.equals(last.text)) {
            return id + " text " + words(text);
        }
        if (!shortText.equals(last.shortText)) {
            return id + " short " + words(shortText);
        }
        return "";
    }

    private static int words(String typed) {
        return typed.split("\\s+", -1).length;
    }
}
