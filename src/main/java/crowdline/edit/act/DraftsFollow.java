package crowdline.edit.act;

import crowdline.arrange.FreshId;
import crowdline.draft.FactWords;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * First drafts that follow their act: it was flown one way when they were written, and is flown another way now. What would be
 * drafted of both shows the difference, and only where they differ is anything changed: a draft becomes its counterpart, or
 * goes if it has none, and what is drafted now and was not before joins it. What a person wrote or accepted stays and is joined
 * by nothing, and a draft that a person took out stays out.
 */
final class DraftsFollow {
    private final Act earlier;
    private final Act later;
    private final Predicate<String> saysAPerson;
    private final Set<String> taken = new HashSet<>();

    /**
     * @param earlier what would be drafted of the act as it was, if nobody had written a word
     * @param later the same of the act as it is
     * @param show as it is
     * @param act as it is
     */
    DraftsFollow(Act earlier, Act later, Show show, Act act) {
        this.earlier = earlier;
        this.later = later;
        Show persons = show.withAct(act.withFigures(
                act.figures().stream()
                        .map(f -> f.withRemarks(byPersons(f.remarks())))
                        .toList(),
                byPersons(act.remarks())));
        saysAPerson = text -> FactWords.isSaid(persons, text);
        taken.addAll(show.remarkIds());
    }

    /** Whether a first draft stands anywhere in it. */
    static boolean isDrafted(Act act) {
        return Stream.concat(act.remarks().stream(), act.figures().stream().flatMap(f -> f.remarks().stream()))
                .anyMatch(Remark::draft);
    }

    /** Whether it is flown as before, as far as a draft could tell. */
    static boolean isFlownAlike(Show before, Act was, Show after, Act is) {
        return silent(was).equals(silent(is))
                && was.variants().equals(is.variants())
                && Objects.equals(was.entry(), is.entry())
                && isSame(before.aircraft(was.airframe()), after.aircraft(is.airframe()))
                && before.venue().equals(after.venue().called(before.venue().name()))
                && before.air().equals(after.air())
                && before.figures().equals(after.figures());
    }

    /** Whether it is the same but for its name, which drafts follow by themselves. */
    private static boolean isSame(Optional<Aircraft> was, Optional<Aircraft> is) {
        return was.equals(is)
                || (was.orElse(null) instanceof Airframe a
                        && is.orElse(null) instanceof Airframe b
                        && a.equals(b.named(a.name())));
    }

    private static List<Figure> silent(Act act) {
        return act.figures().stream().map(f -> f.withRemarks(List.of())).toList();
    }

    /**
     * The act with the drafts it would have.
     *
     * @param was as it was, with what was said in it
     * @param is as it is, with what is left of that
     */
    Act in(Act was, Act is) {
        List<Figure> figures = new ArrayList<>();
        for (Figure figure : is.figures()) {
            List<Remark> before = remarks(earlier, figure.id());
            List<Remark> after = remarks(later, figure.id());
            boolean alike = before.equals(after) && was.figure(figure.id()).isPresent();
            figures.add(alike ? figure : figure.withRemarks(of(figure.id(), stood(was, figure), before, after)));
        }
        return is.withFigures(figures, floating(is.remarks()));
    }

    private static List<Remark> remarks(Act act, String figureId) {
        return act.figure(figureId).map(Figure::remarks).orElse(List.of());
    }

    /** What stands in a figure: the drafts as they were before the edit, and what a person wrote. */
    private static List<Remark> stood(Act was, Figure figure) {
        List<Remark> stood = new ArrayList<>(figure.remarks());
        List<Remark> before = remarks(was, figure.id());
        for (int i = 0; i < before.size(); i++) {
            Remark draft = before.get(i);
            if (draft.draft() && stood.stream().noneMatch(r -> r.id().equals(draft.id()))) {
                stood.add(Math.min(i, stood.size()), draft);
            }
        }
        return stood;
    }

    private List<Remark> of(String figureId, List<Remark> stood, List<Remark> before, List<Remark> after) {
        List<Remark> left = new ArrayList<>(before);
        List<Remark> fresh = new ArrayList<>(after);
        Map<Remark, Remark> placed = new HashMap<>();
        List<Remark> now = new ArrayList<>();
        for (Remark remark : stood) {
            Remark drafted = counterpart(remark, left).orElse(null);
            left.remove(drafted);
            Remark instead =
                    counterpart(drafted == null ? remark : drafted, fresh).orElse(null);
            fresh.remove(instead);
            if (!remark.draft() || !remark.id().startsWith(figureId + "-")) {
                now.add(remark);
            } else if (instead != null && isNew(instead)) {
                Remark follows = instead.withId(remark.id())
                        .saidBy(remark.speaker())
                        .translated(remark.translation())
                        .after(remark);
                placed.put(instead, follows);
                now.add(follows);
            }
        }
        boolean joins = stood.isEmpty() ? before.isEmpty() : stood.stream().allMatch(Remark::draft);
        fresh.removeIf(r -> !joins || counterpart(r, left).isPresent() || !isNew(r));
        int at = 0;
        for (Remark remark : after) {
            Remark there = placed.get(remark);
            if (there != null) {
                at = now.indexOf(there) + 1;
            } else if (fresh.contains(remark)) {
                now.add(at++, taken.contains(remark.id()) ? remark.withId(FreshId.of(remark.id(), taken)) : remark);
            }
        }
        return now;
    }

    /** What says the same, or else is the same of its kind. */
    private static Optional<Remark> counterpart(Remark remark, List<Remark> among) {
        return among.stream()
                .filter(r -> r.text().equals(remark.text()))
                .findFirst()
                .or(() -> among.stream().filter(r -> r.id().equals(remark.id())).findFirst());
    }

    /** Whether no person says it already; figures are announced in the same words now and then. */
    private boolean isNew(Remark remark) {
        return remark.kind() == RemarkKind.CALL || !saysAPerson.test(remark.text());
    }

    /** What is known of people stands in the act while no figure has a place for it. */
    private List<Remark> floating(List<Remark> stood) {
        List<Remark> now = new ArrayList<>(stood);
        now.removeIf(r -> r.draft() && says(earlier, r) && !says(later, r));
        for (Remark remark : later.remarks()) {
            if (remark.draft()
                    && !says(earlier, remark)
                    && counterpart(remark, now).isEmpty()
                    && isNew(remark)) {
                now.add(remark.withId(FreshId.of(remark.id(), taken)));
            }
        }
        return now;
    }

    private static boolean says(Act act, Remark remark) {
        return act.remarks().stream().anyMatch(r -> r.text().equals(remark.text()));
    }

    private static List<Remark> byPersons(List<Remark> remarks) {
        return remarks.stream().filter(r -> !r.draft()).toList();
    }
}
