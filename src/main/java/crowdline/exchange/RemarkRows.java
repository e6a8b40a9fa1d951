package crowdline.exchange;

import crowdline.show.Act;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.bounds.Nearest;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Rows of remarks, each with where it belongs. */
final class RemarkRows {
    private static final Set<String> YES = Set.of("yes", "y", "true", "x", "1", "once", "✓");

    private static final Map<Column, List<String>> HEADS = Map.ofEntries(
            Map.entry(Column.ACT, List.of("act", "display", "item", "act title", "programme")),
            Map.entry(Column.FIGURE, List.of("figure", "manoeuvre", "maneuver", "element", "when")),
            Map.entry(Column.FIGURE_ID, List.of("figure id")),
            Map.entry(Column.KIND, List.of("kind", "type", "sort", "category")),
            Map.entry(
                    Column.WORDS,
                    List.of(
                            "words",
                            "text",
                            "remark",
                            "remarks",
                            "what to say",
                            "say",
                            "commentary",
                            "script",
                            "line")),
            Map.entry(Column.SHORT, List.of("short words", "short text", "short", "shorter", "short form")),
            Map.entry(Column.AT, List.of("at", "moment", "from")),
            Map.entry(Column.UNTIL, List.of("until", "before", "by")),
            Map.entry(Column.EARLIEST, List.of("earliest s", "earliest")),
            Map.entry(Column.LATEST, List.of("latest s", "latest")),
            Map.entry(Column.WEIGHT, List.of("weight", "importance", "priority")),
            Map.entry(Column.ONCE, List.of("once", "only once")),
            Map.entry(Column.SPEAKER, List.of("speaker", "said by", "voice", "who says it", "commentator")),
            Map.entry(Column.LANGUAGE, List.of("language", "other language")),
            Map.entry(
                    Column.OTHER_WORDS, List.of("other words", "translation", "translated", "words in that language")),
            Map.entry(Column.OTHER_SHORT, List.of("other short words", "short translation")),
            Map.entry(Column.OTHER_SPEAKER, List.of("other speaker", "interpreter", "translation by")),
            Map.entry(Column.OTHER_OLDER, List.of("other older", "translation older")),
            Map.entry(Column.ID, List.of("id", "remark id")));

    private final Show show;
    /** Those of the show by how their titles are compared. */
    private final Map<String, Act> acts = new HashMap<>();
    /** What was said of titles that are none. */
    private final Map<String, String> unknown = new HashMap<>();

    private Show now;

    /** What a column can be. */
    enum Column {
        ACT,
        FIGURE,
        FIGURE_ID,
        KIND,
        WORDS,
        SHORT,
        AT,
        UNTIL,
        EARLIEST,
        LATEST,
        WEIGHT,
        ONCE,
        SPEAKER,
        LANGUAGE,
        OTHER_WORDS,
        OTHER_SHORT,
        OTHER_SPEAKER,
        OTHER_OLDER,
        ID
    }

    /** What a row says that cannot be taken. */
    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    RemarkRows(Show show) {
        this.show = show;
        now = show;
        show.acts().forEach(act -> acts.putIfAbsent(Text.key(act.title()), act));
    }

    /** Which column is what, if one of them is words. */
    static Optional<Heads<Column>> heads(List<Cells.Row> rows) {
        return Heads.in(rows, HEADS).filter(found -> found.has(Column.WORDS));
    }

    List<RemarkRow> read(Path name, List<Cells.Row> rows) throws ShowFileException {
        Heads<Column> heads = heads(rows)
                .orElseThrow(() -> new ShowFileException(name + ": no column of words was recognised; put headings over"
                        + " the columns, such as act, figure, kind, words"));
        List<RemarkRow> read = new ArrayList<>();
        for (Cells.Row row : rows.subList(heads.rows(), rows.size())) {
            read.add(row(row, heads));
        }
        if (read.isEmpty()) {
            throw Text.noRows(name);
        }
        return read;
    }

    private RemarkRow row(Cells.Row row, Heads<Column> heads) {
        RemarkPlace place = RemarkPlace.SHOW;
        List<String> said = new ArrayList<>();
        try {
            place = place(row, heads, said);
            Optional<Known> known = known(row.text(heads.of(Column.ID)));
            if (known.isPresent()) {
                if (!known.get().place().equals(place) && heads.has(Column.ACT)) {
                    throw new Refused("The show has remark "
                            + Text.quoted(known.get().remark().id()) + " elsewhere, in "
                            + where(known.get().place()) + "; empty the id to add it here");
                }
                place = known.get().place();
            }
            Remark remark = remark(row, heads, place, known.map(Known::remark).orElse(null), said);
            if (known.isEmpty()) {
                List<Remark> there = new ArrayList<>(place.in(now));
                there.add(remark);
                now = place.with(now, there);
            }
            return new RemarkRow(row.line(), place, where(place), remark, known.isPresent(), said);
        } catch (Refused | IllegalArgumentException e) {
            return new RemarkRow(row.line(), place, where(place), null, false, List.of(String.valueOf(e.getMessage())));
        }
    }

    private record Known(RemarkPlace place, Remark remark) {}

    private Optional<Known> known(String id) {
        return id.isEmpty()
                ? Optional.empty()
                : RemarkPlace.all(show).stream()
                        .flatMap(place -> place.in(show).stream()
                                .filter(remark -> remark.id().equals(id))
                                .map(remark -> new Known(place, remark)))
                        .findFirst();
    }

    private RemarkPlace place(Cells.Row row, Heads<Column> heads, List<String> said) throws Refused {
        String title = row.text(heads.of(Column.ACT));
        String figure = row.text(heads.of(Column.FIGURE));
        String figureId = row.text(heads.of(Column.FIGURE_ID));
        if (title.isEmpty()) {
            if (!figure.isEmpty() || !figureId.isEmpty()) {
                throw new Refused("The row names a figure and no act; write the act too");
            }
            return RemarkPlace.SHOW;
        }
        Act act = acts.get(Text.key(title));
        if (act == null) {
            act = show.act(title)
                    .orElseThrow(() -> new Refused(unknown.computeIfAbsent(
                            title,
                            t -> "The show has no act " + Text.quoted(t)
                                    + Nearest.hint(
                                            t,
                                            show.acts().stream().map(Act::title).toList()))));
        }
        Optional<Figure> byId = act.figure(figureId);
        if (byId.isPresent()) {
            return new RemarkPlace(act.id(), byId.get().id());
        }
        if (figure.isEmpty()) {
            return new RemarkPlace(act.id(), null);
        }
        List<Figure> called = act.figures().stream()
                .filter(f -> Text.key(f.shownName()).equals(Text.key(figure))
                        || Text.key(f.figure()).equals(Text.key(figure))
                        || f.id().equals(figure))
                .toList();
        if (called.isEmpty()) {
            throw new Refused("The act has no figure " + Text.quoted(figure)
                    + Nearest.hint(
                            figure,
                            act.figures().stream().map(Figure::shownName).toList()));
        }
        if (called.size() > 1) {
            said.add("The act has " + called.size() + " of that name; it goes to the first");
        }
        return new RemarkPlace(act.id(), called.get(0).id());
    }

    private Remark remark(
            Cells.Row row, Heads<Column> heads, RemarkPlace place, @Nullable Remark old, List<String> said)
            throws Refused {
        String words = row.text(heads.of(Column.WORDS));
        if (words.isEmpty()) {
            throw new Refused("The row has no words; it is passed over");
        }
        if (words.startsWith("=")) {
            throw new Refused(Text.formula(words));
        }
        RemarkKind kind = kind(row.text(heads.of(Column.KIND)), place, old, said);
        String text = asBefore(words, old == null ? null : old.text());
        boolean isSame = old != null && text.equals(old.text());
        String shorter = row.text(heads.of(Column.SHORT));
        String id = row.text(heads.of(Column.ID));
        Remark read = new Remark(
                old != null ? old.id() : id.isEmpty() || isTaken(id) ? place.freshId(now, kind) : id,
                kind,
                text,
                heads.has(Column.SHORT) ? (shorter.isEmpty() ? null : shorter) : old == null ? null : old.shortText(),
                heads.has(Column.AT) ? moment(row.text(heads.of(Column.AT))) : old == null ? null : old.at(),
                heads.has(Column.UNTIL) ? moment(row.text(heads.of(Column.UNTIL))) : old == null ? null : old.until(),
                heads.has(Column.EARLIEST) ? number(row, heads, Column.EARLIEST) : old == null ? null : old.earliestS(),
                heads.has(Column.LATEST) ? number(row, heads, Column.LATEST) : old == null ? null : old.latestS(),
                weight(row, heads, old),
                heads.has(Column.ONCE) ? isYes(row.text(heads.of(Column.ONCE))) : old != null && old.once(),
                old != null && old.draft() && isSame,
                old == null ? null : old.duty(),
                heads.has(Column.SPEAKER)
                        ? speaker(row.text(heads.of(Column.SPEAKER)))
                        : old == null ? null : old.speaker(),
                heads.has(Column.OTHER_WORDS)
                        ? translation(row, heads, old == null ? null : old.translation())
                        : old == null ? null : old.translation());
        return old == null ? read : read.after(old);
    }

    private boolean isTaken(String id) {
        return now.everyRemark().anyMatch(remark -> remark.id().equals(id));
    }

    private double weight(Cells.Row row, Heads<Column> heads, @Nullable Remark old) throws Refused {
        Double written = number(row, heads, Column.WEIGHT);
        return written != null ? written : heads.has(Column.WEIGHT) || old == null ? 1 : old.weight();
    }

    private RemarkKind kind(String written, RemarkPlace place, @Nullable Remark old, List<String> said) throws Refused {
        if (written.isEmpty()) {
            if (old != null) {
                return old.kind();
            }
            RemarkKind usual = place.kindOfNew(now);
            said.add("No kind is given: " + name(usual));
            return usual;
        }
        List<String> names = new ArrayList<>();
        for (RemarkKind kind : RemarkKind.values()) {
            names.add(name(kind));
            if (name(kind).equals(Text.key(written)) || (name(kind) + "s").equals(Text.key(written))) {
                return kind;
            }
        }
        throw new Refused("There is no kind " + Text.quoted(written) + Nearest.hint(written, names) + "; a remark is a "
                + String.join(", ", names));
    }

    private static String name(RemarkKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private static @Nullable MomentName moment(String written) throws Refused {
        if (written.isEmpty()) {
            return null;
        }
        return MomentName.of(written)
                .orElseThrow(() -> new Refused("There is no moment " + Text.quoted(written)
                        + "; write one that the figure has, such as over the top"));
    }

    private @Nullable Translation translation(Cells.Row row, Heads<Column> heads, @Nullable Translation old)
            throws Refused {
        String words = row.text(heads.of(Column.OTHER_WORDS));
        if (words.isEmpty()) {
            return null;
        }
        String language = row.text(heads.of(Column.LANGUAGE));
        if (language.isEmpty() && old == null) {
            throw new Refused(
                    "The row has words in another language and does not say in which; write its code, such as fr");
        }
        return new Translation(
                language.isEmpty() && old != null ? old.language() : language,
                asBefore(words, old == null ? null : old.text()),
                heads.has(Column.OTHER_SHORT)
                        ? shorter(row.text(heads.of(Column.OTHER_SHORT)), old)
                        : old == null ? null : old.shortText(),
                heads.has(Column.OTHER_SPEAKER)
                        ? speaker(row.text(heads.of(Column.OTHER_SPEAKER)))
                        : old == null ? null : old.speaker(),
                heads.has(Column.OTHER_OLDER)
                        ? isYes(row.text(heads.of(Column.OTHER_OLDER)))
                        : old != null && old.older());
    }

    private static @Nullable String shorter(String words, @Nullable Translation old) {
        return words.isEmpty() ? null : asBefore(words, old == null ? null : old.shortText());
    }

    /** Cells know one space alone: words that differ in nothing else are those there were. */
    private static String asBefore(String words, @Nullable String before) {
        return before != null && before.replaceAll("\\s+", " ").strip().equals(words) ? before : words;
    }

    private static boolean isYes(String written) {
        return YES.contains(written.toLowerCase(Locale.ROOT));
    }

    private @Nullable String speaker(String written) throws Refused {
        if (written.isEmpty()) {
            return null;
        }
        String near = Nearest.hint(
                written, show.speakers().all().stream().map(Speaker::name).toList());
        return show.speakers()
                .find(written)
                .map(Speaker::name)
                .orElseThrow(() -> new Refused("Nobody called " + Text.quoted(written) + " speaks at this show"
                        + (near.isEmpty() ? "; add the speaker in Prepare first, under People" : near)));
    }

    private static @Nullable Double number(Cells.Row row, Heads<Column> heads, Column column) throws Refused {
        String written = row.text(heads.of(column));
        if (written.isEmpty()) {
            return null;
        }
        if (!written.matches("[-−]?[0-9]{1,6}([.,][0-9]{1,6})?")) {
            throw new Refused(Text.quoted(written) + " is no number; write one such as 2.5");
        }
        return Double.valueOf(written.replace('−', '-').replace(',', '.'));
    }

    private String where(RemarkPlace place) {
        Act act = place.actId() == null ? null : show.act(place.actId()).orElse(null);
        if (act == null) {
            return "the whole show";
        }
        return place.figureId() == null
                ? act.title()
                : act.title() + ", "
                        + act.figure(place.figureId()).map(Figure::shownName).orElse("");
    }
}
