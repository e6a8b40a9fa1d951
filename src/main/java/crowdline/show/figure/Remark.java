package crowdline.show.figure;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Something to say. It belongs to a figure, an act or the show, by where it stands in the show file.
 *
 * @param id stable, unique within the show
 * @param kind what sort of remark it is
 * @param text what to say, as written
 * @param shortText a shorter form for when time is short, or null
 * @param at the moment of its figure that it is tied to, or null for the start. Without meaning outside a figure, and for a
 *     call, which comes before its figure
 * @param until the moment by which it must be over, or null
 * @param earliestS earliest start against {@code at} in seconds, negative for before it; null for the kind's own rule.
 *     Without meaning outside a figure
 * @param latestS latest end in seconds against {@code until}, or else against {@code at}; null for the kind's own rule
 * @param weight how much it is wanted against others, above 0; 1 is ordinary
 * @param once true if it is to be said once in the whole show at most
 * @param draft true while the program's own words stand in it and nobody has read and accepted them
 * @param duty how often and when it is to be said, of a duty of the day; null if only its words are known. Without meaning
 *     for another kind, and within an act
 * @param speaker who says it, by name, or null for whoever is at the console
 * @param translation the same in another language, or null
 */
public record Remark(
        String id,
        RemarkKind kind,
        String text,
        @Nullable String shortText,
        @Nullable MomentName at,
        @Nullable MomentName until,
        @Nullable Double earliestS,
        @Nullable Double latestS,
        double weight,
        boolean once,
        boolean draft,
        @Nullable DutyTimes duty,
        @Nullable String speaker,
        @Nullable Translation translation) {

    public Remark {
        Most.mustBeText("remark id", id);
        Most.mustBeText("remark text", text);
        if (shortText != null) {
            Most.mustBeText("remark short text", shortText);
        }
        if (earliestS != null) {
            Quantity.EARLIEST_S.must(earliestS);
        }
        if (latestS != null) {
            Quantity.LATEST_S.must(latestS);
        }
        if (until == null && earliestS != null && latestS != null && latestS <= earliestS) {
            throw new IllegalArgumentException("latestS is " + latestS + "; it must be after earliestS, " + earliestS);
        }
        Quantity.WEIGHT.must(weight);
        if (speaker != null) {
            Most.mustBeText("remark speaker", speaker);
        }
    }

    /** A remark said by whoever is at the console. */
    public Remark(
            String id,
            RemarkKind kind,
            String text,
            @Nullable String shortText,
            @Nullable MomentName at,
            @Nullable MomentName until,
            @Nullable Double earliestS,
            @Nullable Double latestS,
            double weight,
            boolean once,
            boolean draft,
            @Nullable DutyTimes duty) {
        this(id, kind, text, shortText, at, until, earliestS, latestS, weight, once, draft, duty, null, null);
    }

    /** A remark of which nobody says how often it is wanted. */
    public Remark(
            String id,
            RemarkKind kind,
            String text,
            @Nullable String shortText,
            @Nullable MomentName at,
            @Nullable MomentName until,
            @Nullable Double earliestS,
            @Nullable Double latestS,
            double weight,
            boolean once,
            boolean draft) {
        this(id, kind, text, shortText, at, until, earliestS, latestS, weight, once, draft, null);
    }

    /** A remark that a person wrote, and no moment has to do with. */
    public Remark(
            String id,
            RemarkKind kind,
            String text,
            @Nullable String shortText,
            @Nullable Double earliestS,
            @Nullable Double latestS,
            double weight,
            boolean once) {
        this(id, kind, text, shortText, null, null, earliestS, latestS, weight, once, false);
    }

    /** Its words in a form; the full ones if there is no short form. */
    public String words(boolean shortForm) {
        return shortForm && shortText != null ? shortText : text;
    }

    /** The same in other words; those of its other language stay, and are then older. */
    public Remark worded(String words, @Nullable String shorter) {
        RemarkCopy copy = new RemarkCopy(this);
        copy.text = words;
        copy.shortText = shorter;
        return copy.made().after(this);
    }

    /**
     * The same as what became of an earlier one: words in another language that stayed while what they say was worded anew
     * are older than it, and those that were worded themselves are not.
     */
    public Remark after(Remark before) {
        Translation other = translation;
        if (other == null) {
            return this;
        }
        boolean stayed = other.isWordedAs(before.translation);
        return translated(other.older(stayed && (other.older() || !saysSame(before))));
    }

    /** True if what is translated of it says the same; spaces say nothing. */
    private boolean saysSame(Remark before) {
        return isSame(text, before.text)
                && (translation == null
                        || translation.shortText() == null
                        || isSame(
                                Objects.requireNonNullElse(shortText, ""),
                                Objects.requireNonNullElse(before.shortText, "")));
    }

    private static boolean isSame(String text, String other) {
        return text.replaceAll("\\s+", " ")
                .strip()
                .equals(other.replaceAll("\\s+", " ").strip());
    }

    /** The same, tied to moments of its figure. */
    public Remark tied(@Nullable MomentName from, @Nullable MomentName to) {
        RemarkCopy copy = new RemarkCopy(this);
        copy.at = from;
        copy.until = to;
        return copy.made();
    }

    /** The same as a first draft, or as a person's own words. */
    public Remark withDraft(boolean isDraft) {
        RemarkCopy copy = new RemarkCopy(this);
        copy.draft = isDraft;
        return copy.made();
    }

    /** The same with another id. */
    public Remark withId(String other) {
        RemarkCopy copy = new RemarkCopy(this);
        copy.id = other;
        return copy.made();
    }

    /** The same asked for otherwise. */
    public Remark asked(@Nullable DutyTimes other) {
        RemarkCopy copy = new RemarkCopy(this);
        copy.duty = other;
        return copy.made();
    }

    /** The same said by somebody else; null for whoever is at the console. */
    public Remark saidBy(@Nullable String other) {
        RemarkCopy copy = new RemarkCopy(this);
        copy.speaker = other;
        return copy.made();
    }

    /** The same with other words in another language; null for none. */
    public Remark translated(@Nullable Translation other) {
        RemarkCopy copy = new RemarkCopy(this);
        copy.translation = other;
        return copy.made();
    }

    /** True if its words in another language are older than its text. */
    public boolean isOlderInTranslation() {
        return translation != null && translation.older();
    }

    /** How often and when a duty is to be said: what somebody asked for, or once. */
    public DutyTimes dutyTimes() {
        return duty == null ? DutyTimes.ONCE : duty;
    }

    /** True if a moment of its figure says when it is said: of a call none does. */
    public boolean isTied() {
        return kind != RemarkKind.CALL && (at != null || until != null);
    }

    /** What it is tied to, such as {@code at "pivots"} or {@code before "pulls out"}; empty if to nothing. */
    public String tie() {
        MomentName from = at;
        MomentName to = until;
        if (!isTied() || (from == null && to == null)) {
            return "";
        }
        if (from == null) {
            return "before \"" + Objects.requireNonNull(to).words() + '"';
        }
        return to == null ? "at \"" + from.words() + '"' : "from \"" + from.words() + "\" to \"" + to.words() + '"';
    }

    /** A plain remark with no short form and no times of its own. */
    public static Remark of(String id, RemarkKind kind, String text) {
        return new Remark(id, kind, text, null, null, null, 1, false);
    }
}
