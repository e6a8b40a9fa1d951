package crowdline.exchange;

import crowdline.edit.act.AddAct;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Kinds;
import crowdline.show.bounds.Most;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Rows of a running order, each with what is assumed. */
final class ActRows {
    /** What flies where nobody said so, or nobody here knows it: it is only timed. */
    private static final String ANYTHING = "fly-past";

    private static final double SLOT_MINUTES = 10;
    private static final int LONGEST_NAME = 300;
    private static final Pattern SEVERAL = Pattern.compile("(?<!\\d)([2-9]|[1-4]\\d)(?!\\d)");

    private static final Map<Column, List<String>> HEADS = Map.of(
            Column.TEAM, List.of("team", "display team", "equipe", "squadron"),
            Column.START,
                    List.of(
                            "start",
                            "start time",
                            "time",
                            "slot",
                            "slot time",
                            "slot start",
                            "begins",
                            "begin",
                            "from",
                            "on",
                            "on time",
                            "display time",
                            "time on",
                            "beginn",
                            "debut",
                            "heure",
                            "local",
                            "local time"),
            Column.END,
                    List.of(
                            "time off",
                            "end",
                            "end time",
                            "ends",
                            "off",
                            "off time",
                            "until",
                            "to",
                            "finish",
                            "slot end"),
            Column.MINUTES,
                    List.of(
                            "minutes",
                            "dur",
                            "dauer",
                            "duree",
                            "time",
                            "mins",
                            "min",
                            "duration",
                            "length",
                            "slot length",
                            "slot minutes",
                            "display length",
                            "how long"),
            Column.TITLE,
                    List.of(
                            "act",
                            "vorfuhrung",
                            "demonstration",
                            "title",
                            "display",
                            "item",
                            "display item",
                            "event",
                            "display act",
                            "programme",
                            "what",
                            "name"),
            Column.PERFORMER,
                    List.of(
                            "performer",
                            "performed by",
                            "captain",
                            "lead",
                            "pilote",
                            "pilotes",
                            "equipage",
                            "pilot",
                            "pilots",
                            "pilot name",
                            "flown by",
                            "crew",
                            "display pilot",
                            "who",
                            "operator"),
            Column.AIRCRAFT,
                    List.of(
                            "aircraft",
                            "muster",
                            "flugzeug",
                            "appareil",
                            "avion",
                            "aircraft type",
                            "type",
                            "type of aircraft",
                            "machine",
                            "kind",
                            "a c",
                            "ac"));

    private final Show show;
    private final Kinds kinds;
    /** Those of the show by how their titles are compared. */
    private final Map<String, Act> acts = new HashMap<>();

    private final Set<String> met = new HashSet<>();
    /** Names and when they begin. */
    private final Set<String> shown = new HashSet<>();

    private int added;
    /** Who is named in the row above. */
    private String above = "";
    /** When the last act that was taken begins. */
    private @Nullable LocalTime before;

    /** What a column can be. */
    enum Column {
        START,
        END,
        MINUTES,
        TITLE,
        PERFORMER,
        AIRCRAFT,
        TEAM
    }

    ActRows(Show show, Kinds kinds) {
        this.show = show;
        this.kinds = kinds;
        show.acts().forEach(act -> acts.putIfAbsent(Text.key(act.title()), act));
    }

    List<ActRow> read(Path name, List<Cells.Row> rows) throws ShowFileException {
        Heads<Column> heads = Heads.in(rows, HEADS, ActRows::fits).orElseGet(() -> guessed(rows));
        if (!heads.has(Column.TITLE)
                && !heads.has(Column.PERFORMER)
                && !heads.has(Column.AIRCRAFT)
                && !heads.has(Column.TEAM)) {
            throw new ShowFileException(name + ": no column of acts was recognised; put headings over the columns,"
                    + " such as start, minutes, act, performer, aircraft");
        }
        List<ActRow> acts = new ArrayList<>();
        @Nullable LocalTime free = null;
        for (Cells.Row row : rows.subList(Math.min(heads.rows(), rows.size()), rows.size())) {
            ActRow act = act(row, heads, free == null ? AddAct.nextSlot(show) : free);
            acts.add(act);
            if (act.taken()) {
                before = act.start();
                free = act.start().plusSeconds(Math.round(act.minutes() * 60));
            }
        }
        if (acts.isEmpty()) {
            throw Text.noRows(name);
        }
        return acts;
    }

    /** A column that counts its rows is no time, and one of numbers no name, whatever its head says. */
    private static boolean fits(Column column, List<String> values) {
        boolean isLengths = mostly(values, text -> Written.minutes(text).isPresent());
        boolean isTimes = mostly(values, text -> Written.clock(text).isPresent());
        return switch (column) {
            case START, END -> !isCount(values) && !(isLengths && !isTimes);
            case MINUTES -> !isCount(values);
            case TITLE, PERFORMER, AIRCRAFT, TEAM -> !mostly(values, text -> text.matches("[\\d.,:]+|\\p{L}?\\d{0,3}"));
        };
    }

    /** Without heads: times and lengths are told by how they look, texts come in the order act, performer, aircraft. */
    private Heads<Column> guessed(List<Cells.Row> rows) {
        Map<Column, Integer> found = new EnumMap<>(Column.class);
        int widest = rows.stream().mapToInt(row -> row.width()).max().orElse(0);
        for (int column = 0; column < widest; column++) {
            int at = column;
            List<String> said = rows.stream()
                    .map(row -> row.text(at))
                    .filter(t -> !t.isEmpty())
                    .toList();
            if (said.isEmpty()) {
                continue;
            }
            if (mostly(said, text -> Written.clock(text).isPresent()) && !mostly(said, ActRows::isSmallNumber)) {
                found.putIfAbsent(found.containsKey(Column.START) ? Column.END : Column.START, at);
            } else if (mostly(said, text -> Written.minutes(text).isPresent())) {
                // Rows are often numbered: what counts up by one is no length.
                if (!isCount(said)) {
                    found.putIfAbsent(Column.MINUTES, at);
                }
            } else if (mostly(said, text -> kind(text).isPresent())) {
                found.putIfAbsent(Column.AIRCRAFT, at);
            } else if (!found.containsKey(Column.TITLE)) {
                found.put(Column.TITLE, at);
            } else {
                found.putIfAbsent(Column.PERFORMER, at);
            }
        }
        return Heads.without(found);
    }

    private static boolean isSmallNumber(String text) {
        return text.matches("\\d{1,3}");
    }

    private static boolean isCount(List<String> said) {
        for (int i = 0; i < said.size(); i++) {
            if (!said.get(i).matches("0*" + (i + 1) + "[.)]?")) {
                return false;
            }
        }
        return said.size() > 1;
    }

    private static boolean mostly(List<String> said, Predicate<String> is) {
        return said.stream().filter(is).count() * 3 > said.size() * 2L;
    }

    private ActRow act(Cells.Row row, Heads<Column> heads, LocalTime free) {
        List<String> said = new ArrayList<>();
        String team = row.text(heads.of(Column.TEAM));
        String inItsColumn = RowKinds.unnumbered(row.text(heads.of(Column.TITLE)));
        String title = inItsColumn.isEmpty() && heads.has(Column.PERFORMER) ? team : inItsColumn;
        String pilots = RowKinds.named(row.text(heads.of(Column.PERFORMER)));
        String performer = RowKinds.isDitto(pilots) ? above : pilots.isEmpty() ? RowKinds.named(team) : pilots;
        above = performer;
        String aircraft = row.text(heads.of(Column.AIRCRAFT));
        Kinds.Named kind = kind(aircraft).or(() -> kind(title)).orElseGet(() -> {
            said.add(
                    aircraft.isEmpty()
                            ? "Nothing says what flies it: it is only timed until its kind is chosen"
                            : Text.quoted(aircraft)
                                    + " is no kind of aircraft known here: it is only timed until its kind is chosen");
            return new Kinds.Named(kinds.named(ANYTHING), null);
        });
        LocalTime start = start(row, heads, free, said);
        double minutes = minutes(row, heads, start, said);
        boolean isTitle = !title.isEmpty() && !(RowKinds.isSort(title) && !aircraft.isEmpty());
        String written = isTitle ? title : aircraft.isEmpty() ? performer : aircraft;
        String named = free(written);
        Optional<Act> known =
                named.length() > 2 * LONGEST_NAME ? Optional.empty() : Optional.ofNullable(acts.get(Text.key(named)));
        if (!named.equals(written)) {
            said.add(Text.quoted(written) + " is in a row above as well; this one is called " + Text.quoted(named));
        }
        String why = refusal(row, heads, named, start, minutes, known.isPresent());
        if (why != null) {
            said.clear();
            said.add(why);
        } else if (known.isPresent()) {
            said.clear();
            said.add(changes(known.get(), start, minutes));
        }
        return new ActRow(
                row.line(),
                named,
                start,
                minutes,
                performer,
                aircraft,
                kind,
                known.map(Act::id).orElse(null),
                why == null,
                said);
    }

    /** The name, or with a number behind it if an act above has it: one aircraft may fly twice. */
    private String free(String named) {
        int times = 1;
        String name = named;
        while (name.length() <= LONGEST_NAME && !name.isEmpty() && met.contains(Text.key(name))) {
            name = named + " (" + ++times + ")";
        }
        return name;
    }

    private @Nullable String refusal(
            Cells.Row row, Heads<Column> heads, String named, LocalTime start, double minutes, boolean known) {
        Optional<String> formula =
                row.texts().filter(text -> text.startsWith("=")).findFirst();
        if (formula.isPresent()) {
            return Text.formula(formula.get());
        }
        if (named.isEmpty()) {
            return "The row names no act; it is passed over";
        }
        int letters = named.codePointCount(0, named.length());
        if (letters > LONGEST_NAME) {
            return "The name of the act is " + letters + " letters long; shorten it to " + LONGEST_NAME;
        }
        if (RowKinds.isHeads(row, heads)) {
            return "The headings are repeated here; they are passed over";
        }
        String noAct = RowKinds.noAct(row, named);
        if (noAct != null) {
            return noAct;
        }
        if (RowKinds.isMore(row, heads)) {
            return "The row has no start; it is taken for more of the row above, and passed over";
        }
        if (minutes > 600) {
            return "An act of " + RunningOrder.number(minutes)
                    + " minutes is longer than a day's flying; check the length";
        }
        if (!shown.add(Text.key(named.replaceFirst(" \\(\\d+\\)$", "")) + " " + start)) {
            return Text.quoted(named) + " is in a row above as well, at the same time; leave one of them out";
        }
        met.add(Text.key(named));
        if (!known && show.acts().size() + ++added > Most.ACTS.entries()) {
            return "A show has " + Most.ACTS.entries() + " acts at most, and this one is over that; split the day";
        }
        return null;
    }

    private static String changes(Act act, LocalTime start, double minutes) {
        if (act.slotStart().equals(start) && act.slotMinutes() == minutes) {
            return "The show has it at this time already";
        }
        return "The show has it at " + act.slotStart() + " for " + RunningOrder.number(act.slotMinutes())
                + " min; it is moved";
    }

    private LocalTime start(Cells.Row row, Heads<Column> heads, LocalTime free, List<String> said) {
        String written = row.text(heads.of(Column.START));
        Optional<LocalTime> start = Written.clock(written).map(time -> RowKinds.afternoon(written, time, before));
        if (start.isEmpty()) {
            said.add((written.isEmpty() ? "No start is given" : Text.quoted(written) + " is no time of day") + ": "
                    + free + ", when the one before it is over");
        }
        return start.orElse(free);
    }

    private static double minutes(Cells.Row row, Heads<Column> heads, LocalTime start, List<String> said) {
        String written = row.text(heads.of(Column.MINUTES));
        OptionalDouble minutes = Written.minutes(written);
        if (minutes.isPresent()) {
            return minutes.getAsDouble();
        }
        Optional<LocalTime> end = Written.clock(row.text(heads.of(Column.END)))
                .or(() -> Written.rangeEnd(row.text(heads.of(Column.START))));
        if (end.isPresent() && !end.get().equals(start)) {
            long seconds = Duration.between(start, end.get()).toSeconds();
            return (seconds < 0 ? seconds + Duration.ofDays(1).toSeconds() : seconds) / 60.0;
        }
        said.add((written.isEmpty() ? "No length is given" : Text.quoted(written) + " is no length in minutes") + ": "
                + RunningOrder.number(SLOT_MINUTES) + " min are assumed");
        return SLOT_MINUTES;
    }

    /** The kind a text names, alone or among other words; the longest name in it. */
    private Optional<Kinds.Named> kind(String text) {
        if (text.isEmpty() || text.length() > 200) {
            return Optional.empty();
        }
        try {
            return Optional.of(kinds.counted(text));
        } catch (IllegalArgumentException notAlone) {
            String words = " " + Text.key(text) + " ";
            return kinds.all().stream()
                    .flatMap(kind -> kind.names().stream().map(name -> Map.entry(Text.key(name), kind)))
                    .filter(e -> words.contains(" " + e.getKey() + " ") || words.contains(" " + e.getKey() + "s "))
                    .max(Comparator.comparingInt(e -> e.getKey().length()))
                    .map(e -> new Kinds.Named(e.getValue(), number(e.getValue(), text)));
        }
    }

    private static @Nullable Integer number(Kind kind, String text) {
        Matcher several = SEVERAL.matcher(text);
        return !kind.flies() && several.find() ? Integer.valueOf(several.group(1)) : null;
    }
}
