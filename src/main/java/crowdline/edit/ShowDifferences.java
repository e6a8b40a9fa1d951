package crowdline.edit;

import crowdline.show.Act;
import crowdline.show.Announcement;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What differs between two versions of a show, in words: acts, figures, remarks and the rest, one line each. */
public final class ShowDifferences {
    private static final int MOST = 200;

    private final List<String> lines = new ArrayList<>();

    private ShowDifferences() {}

    /**
     * The differences, as what the other version has against this one; empty if there are none.
     *
     * @param mine this version
     * @param theirs the other
     */
    public static List<String> of(Show mine, Show theirs) {
        ShowDifferences found = new ShowDifferences();
        found.shows(mine, theirs);
        int more = found.lines.size() - MOST;
        if (more > 0) {
            List<String> first = new ArrayList<>(found.lines.subList(0, MOST));
            first.add("and " + more + " more");
            return first;
        }
        return List.copyOf(found.lines);
    }

    private void shows(Show mine, Show theirs) {
        value("The title", mine.title(), theirs.title());
        value("The date", mine.date(), theirs.date());
        part("The place", mine.venue(), theirs.venue());
        part("The air of the day", mine.air(), theirs.air());
        each(
                "Aircraft",
                byKey(mine.airframes(), a -> a.id()),
                byKey(theirs.airframes(), a -> a.id()),
                a -> a.name(),
                (a, b) -> false);
        each(
                "Performer",
                byKey(mine.performers(), p -> p.id()),
                byKey(theirs.performers(), p -> p.id()),
                p -> p.name(),
                (a, b) -> false);
        each("Act", byKey(mine.acts(), Act::id), byKey(theirs.acts(), Act::id), Act::title, this::acts);
        order(
                "The running order",
                mine.acts().stream().map(Act::id).toList(),
                theirs.acts().stream().map(Act::id).toList());
        remarks("", mine.remarks(), theirs.remarks());
        part("The show's own figures", mine.figures(), theirs.figures());
        part("How names are said", mine.sayAs(), theirs.sayAs());
        part("The incident page", mine.incident(), theirs.incident());
        each(
                "Announcement",
                byKey(mine.announcements(), Announcement::id),
                byKey(theirs.announcements(), Announcement::id),
                Announcement::occasion,
                (a, b) -> false);
    }

    private boolean acts(Act mine, Act theirs) {
        int before = lines.size();
        String in = "“" + mine.title() + "”: ";
        value(in + "the title", mine.title(), theirs.title());
        value(
                in + "the slot",
                mine.slotStart() + ", " + mine.slotMinutes() + " min",
                theirs.slotStart() + ", " + theirs.slotMinutes() + " min");
        part(in + "the performer", mine.performer(), theirs.performer());
        part(in + "the aircraft", mine.airframe(), theirs.airframe());
        part(in + "where it begins", mine.entry(), theirs.entry());
        each(
                in + "figure",
                byKey(mine.figures(), Figure::id),
                byKey(theirs.figures(), Figure::id),
                Figure::shownName,
                (a, b) -> figures(in, a, b));
        part(in + "the order of the figures", mine.variants(), theirs.variants());
        remarks(in, mine.remarks(), theirs.remarks());
        return lines.size() > before;
    }

    private boolean figures(String in, Figure mine, Figure theirs) {
        int before = lines.size();
        remarks(in + mine.shownName() + ", ", mine.remarks(), theirs.remarks());
        if (!mine.withRemarks(List.of()).equals(theirs.withRemarks(List.of()))) {
            lines.add(in + "figure " + mine.shownName() + " is flown otherwise");
        }
        return lines.size() > before;
    }

    private void remarks(String in, List<Remark> mine, List<Remark> theirs) {
        each(
                in + "remark",
                byKey(mine, Remark::id),
                byKey(theirs, Remark::id),
                r -> "“" + Written.brief(r.text(), 60) + "”",
                (a, b) -> {
                    boolean said = !a.text().equals(b.text());
                    if (said) {
                        lines.add(in + "remark “" + Written.brief(a.text(), 60) + "” is now “"
                                + Written.brief(b.text(), 60) + "”");
                    }
                    return said;
                });
    }

    /** How two versions of one thing differ is said; false if nothing was said of it. */
    private interface Inside<T> {
        boolean say(T mine, T theirs);
    }

    private <T> void each(
            String what, Map<String, T> mine, Map<String, T> theirs, Function<T, String> name, Inside<T> inside) {
        mine.forEach((id, one) -> {
            T other = theirs.get(id);
            if (other == null) {
                lines.add(what + " " + name.apply(one) + " is not in it");
            } else if (!one.equals(other) && !inside.say(one, other)) {
                lines.add(what + " " + name.apply(one) + " is different");
            }
        });
        theirs.forEach((id, one) -> {
            if (!mine.containsKey(id)) {
                lines.add(what + " " + name.apply(one) + " is new in it");
            }
        });
    }

    private void order(String what, List<String> mine, List<String> theirs) {
        List<String> here = mine.stream().filter(theirs::contains).toList();
        List<String> there = theirs.stream().filter(mine::contains).toList();
        if (!here.equals(there)) {
            lines.add(what + " is different");
        }
    }

    private void value(String what, Object mine, Object theirs) {
        if (!mine.equals(theirs)) {
            lines.add(what + " is “" + Written.brief(theirs.toString(), 60) + "” in it, not “"
                    + Written.brief(mine.toString(), 60) + "”");
        }
    }

    private void part(String what, @Nullable Object mine, @Nullable Object theirs) {
        if (!Objects.equals(mine, theirs)) {
            lines.add(what + (what.endsWith("figures") ? " are" : " is") + " different");
        }
    }

    private static <T> Map<String, T> byKey(List<T> all, Function<T, String> key) {
        Map<String, T> map = new LinkedHashMap<>();
        all.forEach(one -> map.put(key.apply(one), one));
        return map;
    }
}
