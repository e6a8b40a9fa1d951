package crowdline.edit.act;

import crowdline.arrange.FreshId;
import crowdline.draft.RenamedWords;
import crowdline.edit.Change;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Edits of the running order: which acts there are, in which order, when, and who flies them. */
public final class Acts {
    private Acts() {}

    /** Takes an act out of the show, with all that is said in it. */
    public static Edit remove(String actId) {
        return show -> {
            Act act = Found.act(show, actId);
            return changed(
                    show,
                    "Remove act " + Found.quoted(act.title()),
                    show.acts().stream().filter(a -> !a.id().equals(actId)).toList());
        };
    }

    /** Puts a copy of an act behind it, with ids of its own. */
    public static Edit duplicate(String actId) {
        return show -> {
            Act act = Found.act(show, actId);
            List<Act> acts = new ArrayList<>(show.acts());
            acts.add(acts.indexOf(act) + 1, copy(show, act));
            return changed(show, "Duplicate act " + Found.quoted(act.title()), acts);
        };
    }

    private static Act copy(Show show, Act act) {
        Set<String> acts = show.acts().stream().map(Act::id).collect(Collectors.toCollection(HashSet::new));
        Set<String> remarks = show.remarkIds();
        List<Figure> figures = act.figures().stream()
                .map(f -> f.withRemarks(copies(f.remarks(), remarks)))
                .toList();
        String title = act.title() + " (copy)";
        return new Act(
                FreshId.of(act.id(), acts),
                title,
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                act.entry(),
                figures,
                act.variants(),
                copies(act.remarks(), remarks));
    }

    private static List<Remark> copies(List<Remark> remarks, Set<String> taken) {
        return remarks.stream().map(r -> r.withId(FreshId.of(r.id(), taken))).toList();
    }

    /** Announces an act otherwise, in first drafts too where a team is welcomed by it. */
    public static Edit rename(String actId, String title) {
        return refusing(show -> {
            Act act = Found.act(show, actId);
            return new Change(
                    "Rename act " + Found.quoted(act.title()),
                    RenamedWords.of(show, show.withAct(act.withTitle(title.strip()))),
                    "title of " + actId);
        });
    }

    /**
     * Moves an act in the running order; the slots stay with the acts.
     *
     * @param by places towards the end, negative towards the beginning; as far as there are places
     */
    public static Edit move(String actId, int by) {
        return show -> {
            Act act = Found.act(show, actId);
            List<Act> acts = new ArrayList<>(show.acts());
            int from = acts.indexOf(act);
            acts.remove(from);
            acts.add(Math.max(0, Math.min(acts.size(), from + by)), act);
            return new Change(
                    "Move act " + Found.quoted(act.title()), show.withActs(acts, show.remarks()), "order of " + actId);
        };
    }

    /** Puts the acts in the order of their slots; those with the same stay in the order they have. */
    public static Edit byTheClock() {
        return show -> {
            List<Act> acts = new ArrayList<>(show.acts());
            Collections.sort(acts, (a, b) -> show.slotStart(a).compareTo(show.slotStart(b)));
            return changed(show, "Put the acts in order of time", acts);
        };
    }

    /**
     * Gives an act another slot.
     *
     * @param minutes how long it is planned, above 0
     */
    public static Edit slot(String actId, LocalTime start, double minutes) {
        return refusing(show -> {
            Act act = Found.act(show, actId);
            return Change.of("Slot of " + Found.quoted(act.title()), show.withAct(act.withSlot(start, minutes)));
        });
    }

    /** Gives an act to somebody of this name, in first drafts too, who is added to the show if nobody is called so. */
    public static Edit performer(String actId, String name) {
        return refusing(show -> {
            Act act = Found.act(show, actId);
            Show with = Performers.with(show, name);
            Performer flies = Performers.named(with, name);
            return Change.of(
                    "Performer of " + Found.quoted(act.title()),
                    RenamedWords.of(show, with.withAct(act.flownBy(flies.id(), act.airframe()))));
        });
    }

    private static Change changed(Show show, String name, List<Act> acts) {
        return Change.of(name, show.withActs(acts, show.remarks()));
    }

    /** The edit with what a value refuses said as what cannot be. */
    private static Edit refusing(Edit edit) {
        return edit.refusing();
    }
}
