package crowdline.paper;

import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.patter.Unplaced;
import crowdline.sheet.RunningSheet;
import crowdline.sheet.page.Sign;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A remark as it stands on paper.
 *
 * @param when it is to be said, or empty if nobody knows
 * @param seconds what it takes
 * @param note what else is to be known of it, or empty
 * @param draft whether nobody has gone over it yet
 */
record Said(String id, RemarkKind kind, String when, String seconds, String note, boolean draft, String words) {

    static Said of(PaperAct act, Placed placed) {
        Remark remark = act.lookup().remark(placed.remarkId()).orElseThrow();
        return new Said(
                placed.remarkId(),
                placed.kind(),
                clock(placed.startS()),
                seconds(placed.endS() - placed.startS()),
                note(act, remark, placed.tight()),
                remark.draft(),
                remark.words(placed.form() == RemarkForm.SHORT));
    }

    static Said of(PaperAct act, Unplaced unplaced) {
        Remark remark = act.lookup().remark(unplaced.remarkId()).orElseThrow();
        return new Said(
                remark.id(),
                remark.kind(),
                "",
                seconds(act.lookup().time(remark, false).seconds()),
                note(act, remark, false),
                remark.draft(),
                remark.text());
    }

    /** Who says it if it is not whoever reads the paper, and whether it just fits. */
    private static String note(PaperAct act, Remark remark, boolean tight) {
        return joined(act.lookup().other(remark).orElse(""), tight ? "just fits" : "");
    }

    /** The note, and whether it is a draft. */
    String noteOfDraft() {
        return note(draft ? "draft" : "");
    }

    /** The note, and one thing more. */
    String note(String more) {
        return joined(note, more);
    }

    private static String joined(String first, String second) {
        return Stream.of(first, second).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }

    /** Seconds from the start of the act, such as 1:07, or −0:10 before it. */
    static String clock(double seconds) {
        return (Math.round(seconds) < 0 ? "−" : "") + RunningSheet.minutes(Math.abs(seconds));
    }

    static String seconds(double seconds) {
        return String.format(Locale.UK, "%d s", Math.max(1, Math.round(seconds)));
    }

    String word() {
        return ShowLookup.word(kind);
    }

    Sign sign() {
        return switch (kind) {
            case DUTY -> Sign.SQUARE;
            case CALL -> Sign.TRIANGLE;
            case EXPLANATION -> Sign.RING;
            case FACT -> Sign.DISC;
            case FILLER -> Sign.DIAMOND;
        };
    }
}
