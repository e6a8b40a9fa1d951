package crowdline.edit.day;

import crowdline.arrange.FreshId;
import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.measure.Hour;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Edits of the duties of the day: their words, and how often and when they are asked for. */
public final class AskedDuties {
    private AskedDuties() {}

    /** Adds a duty that is to be said once between acts. */
    public static Edit add(String words) {
        return ((Edit) show -> {
                    Set<String> ids = show.remarkIds();
                    List<Remark> all = new ArrayList<>(show.remarks());
                    all.add(Remark.of(FreshId.of("duty", ids), RemarkKind.DUTY, words.strip())
                            .asked(new DutyTimes(1, null, null, null, null, false)));
                    return Change.of("Add a duty", show.withActs(show.acts(), all));
                })
                .refusing();
    }

    /** Takes a duty out, with its words. */
    public static Edit remove(String id) {
        return show -> {
            Remark gone = find(show, id);
            return Change.of(
                    "Remove the duty " + quoted(gone),
                    show.withActs(
                            show.acts(),
                            show.remarks().stream()
                                    .filter(r -> !r.id().equals(id))
                                    .toList()));
        };
    }

    /** What is said. */
    public static Edit words(String id, String words) {
        return edit(id, "Words of the duty ", r -> worded(r, words.strip(), r.shortText()));
    }

    /** What is said when time is short; nothing of its own if that is blank. */
    public static Edit shortWords(String id, String words) {
        return edit(id, "Short words of the duty ", r -> worded(r, r.text(), words.isBlank() ? null : words.strip()));
    }

    private static Remark worded(Remark r, String text, @Nullable String shorter) {
        return r.worded(text, shorter).withDraft(false);
    }

    /** How often, as a whole number. */
    public static Edit times(String id, String typed) throws CannotBe {
        int times = (int) number(typed, "How often a duty is said", "4");
        return asked(id, d -> new DutyTimes(times, d.apartMinutes(), d.by(), d.afterAct(), d.beforeAct(), d.inActs()));
    }

    /** How many minutes lie between two times at least; the usual quarter of an hour if that is blank. */
    public static Edit apart(String id, String typed) throws CannotBe {
        Double minutes = typed.isBlank() ? null : Double.valueOf(number(typed, "The minutes between two times", "20"));
        return asked(id, d -> new DutyTimes(d.times(), minutes, d.by(), d.afterAct(), d.beforeAct(), d.inActs()));
    }

    /** By which hour the last time; no hour if that is blank. */
    public static Edit by(String id, String typed) throws CannotBe {
        LocalTime by = typed.isBlank() ? null : hour(typed.strip());
        return asked(id, d -> new DutyTimes(d.times(), d.apartMinutes(), by, d.afterAct(), d.beforeAct(), d.inActs()));
    }

    /** After which act, or after none if it is null. */
    public static Edit after(String id, @Nullable String actId) {
        return asked(id, d -> new DutyTimes(d.times(), d.apartMinutes(), d.by(), actId, d.beforeAct(), d.inActs()));
    }

    /** Before which act, or before none if it is null. */
    public static Edit before(String id, @Nullable String actId) {
        return asked(id, d -> new DutyTimes(d.times(), d.apartMinutes(), d.by(), d.afterAct(), actId, d.inActs()));
    }

    /** Whether also while an act is in the air. */
    public static Edit inActs(String id, boolean also) {
        return asked(id, d -> new DutyTimes(d.times(), d.apartMinutes(), d.by(), d.afterAct(), d.beforeAct(), also));
    }

    private static double number(String typed, String what, String such) throws CannotBe {
        String plain = typed.strip().replace(',', '.');
        if (!plain.matches("[0-9]{1,4}(\\.[0-9]{1,2})?")) {
            throw new CannotBe(what + " is " + Written.quoted(typed.strip()) + "; it must be a number such as " + such);
        }
        return Double.parseDouble(plain);
    }

    private static LocalTime hour(String typed) throws CannotBe {
        return Hour.typed(typed)
                .orElseThrow(
                        () -> new CannotBe("The hour is " + Written.quoted(typed) + "; it must be one such as 16:30"));
    }

    private static Edit asked(String id, UnaryOperator<DutyTimes> changing) {
        return edit(id, "When to say the duty ", r -> r.asked(changing.apply(r.dutyTimes())));
    }

    private static Edit edit(String id, String name, UnaryOperator<Remark> changing) {
        return ((Edit) show -> {
                    Remark before = find(show, id);
                    Remark after = changing.apply(before);
                    return Change.of(
                            name + quoted(before),
                            show.withActs(
                                    show.acts(),
                                    show.remarks().stream()
                                            .map(r -> r.id().equals(id) ? after : r)
                                            .toList()));
                })
                .refusing();
    }

    private static Remark find(Show show, String id) throws CannotBe {
        return show.remarks().stream()
                .filter(r -> r.id().equals(id) && r.kind() == RemarkKind.DUTY)
                .findFirst()
                .orElseThrow(() -> new CannotBe("That duty is no longer in the show; choose another"));
    }

    private static String quoted(Remark remark) {
        return "“" + Written.brief(remark.text(), 40) + "”";
    }

    /** How acts are told apart in a list of them: by their slot and title, which may be the same twice. */
    public static String named(Act act) {
        return String.format(Locale.UK, "%s %s", act.slotStart(), act.title());
    }
}
