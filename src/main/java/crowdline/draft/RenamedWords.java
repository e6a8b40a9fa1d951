package crowdline.draft;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Keeps first drafts with the names in them: who flies, or what they fly, was called otherwise after an act's words were
 * drafted. What a person wrote or accepted stays, and so does a title that somebody gave.
 */
public final class RenamedWords {
    private final Map<String, String> names;

    private RenamedWords(Map<String, String> names) {
        this.names = names;
    }

    /**
     * A show in which somebody or something is called otherwise.
     *
     * @param before as they were called
     * @param after as they are called, with the words as they were
     */
    public static Show of(Show before, Show after) {
        Show now = after;
        for (Act act : after.acts()) {
            Optional<Act> was = before.act(act.id());
            if (was.isPresent()) {
                Map<String, String> names = changed(before, was.get(), after, act);
                String title = title(before, was.get()).equals(act.title()) ? title(after, act) : act.title();
                now = now.withAct(new RenamedWords(names).in(act).withTitle(title));
            }
        }
        return now;
    }

    /** As an act is called that nobody gave a name: by who flies what. */
    private static String title(Show show, Act act) {
        String craft = show.aircraft(act.airframe()).map(Aircraft::name).orElse("");
        return show.performer(act.performer()).map(p -> p.name() + ", ").orElse("") + craft;
    }

    /** What is said otherwise now, the longest first where one holds another. */
    private static Map<String, String> changed(Show earlier, Act was, Show later, Act is) {
        Names before = Names.of(earlier, was);
        Names after = Names.of(later, is);
        Map<String, String> names = new LinkedHashMap<>();
        if (before.known()) {
            put(
                    names,
                    Opening.who(before, earlier.aircraft(was.airframe()).orElse(null)),
                    Opening.who(after, later.aircraft(is.airframe()).orElse(null)));
        }
        if (!before.team().isEmpty() && !after.team().isEmpty()) {
            put(names, before.team(), after.team());
        }
        put(names, before.introduced(), after.introduced());
        put(names, before.aircraft(), after.aircraft());
        if (before.known() && after.known()) {
            put(names, before.full(), after.full());
            put(names, before.first(), after.first());
        }
        return names;
    }

    private static void put(Map<String, String> names, String before, String after) {
        if (!before.equals(after)) {
            names.putIfAbsent(before, after);
            names.putIfAbsent(Sentences.begun(before), Sentences.begun(after));
        }
    }

    private Act in(Act act) {
        if (names.isEmpty()) {
            return act;
        }
        List<Figure> figures =
                act.figures().stream().map(f -> f.withRemarks(in(f.remarks()))).toList();
        return act.withFigures(figures, in(act.remarks()));
    }

    private List<Remark> in(List<Remark> remarks) {
        return remarks.stream().map(this::in).toList();
    }

    private Remark in(Remark remark) {
        String shorter = remark.shortText();
        return remark.draft() ? remark.worded(said(remark.text()), shorter == null ? null : said(shorter)) : remark;
    }

    /** Every name in one go, or one that was put in would be changed again. */
    private String said(String text) {
        String any =
                String.join("|", names.keySet().stream().map(Pattern::quote).toList());
        Matcher found = Pattern.compile("(?<![\\p{L}\\p{N}])(" + any + ")(?![\\p{L}\\p{N}])")
                .matcher(text);
        return found.replaceAll(m -> Matcher.quoteReplacement(name(m.group(1))));
    }

    private String name(@Nullable String before) {
        return names.getOrDefault(String.valueOf(before), String.valueOf(before));
    }
}
