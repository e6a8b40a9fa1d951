package crowdline.list.draft;

import crowdline.list.line.ListLine;
import crowdline.list.line.Place;
import crowdline.list.line.Side;
import crowdline.list.line.Sided;
import crowdline.list.name.Names;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import crowdline.show.figure.Placing.Heading;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A line while it is being read. */
public final class Draft {
    private final Map<Detail, Object> said = new EnumMap<>(Detail.class);
    private final List<Detail> contradicted = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<int[]> spans = new ArrayList<>();
    private Names.@Nullable Sense sense;
    private List<Word> name = List.of();
    private boolean doubtful;
    private @Nullable String beside;
    private boolean leads;
    private boolean starts;
    private List<String> alternatives = List.of();
    private @Nullable String called;

    /** "1 x spin (3)" has three turns. */
    private static final Double ONE = 1.0;

    public Draft(int start, int end) {
        spans.add(new int[] {start, end});
    }

    /** Where it begins in the text. */
    public int start() {
        return spans.get(0)[0];
    }

    /** Begins earlier. */
    public void beginAt(int start) {
        spans.get(0)[0] = start;
    }

    /** Takes in a further stretch of the text. */
    public void takeIn(int start, int end) {
        int[] last = spans.get(spans.size() - 1);
        if (last[1] == start) {
            last[1] = end;
        } else {
            spans.add(new int[] {start, end});
        }
    }

    /** Takes in what another took in before this one. */
    public void takeInBefore(Draft other) {
        int[] last = other.spans.get(other.spans.size() - 1);
        if (last[1] == start()) {
            beginAt(last[0]);
            spans.addAll(0, other.spans.subList(0, other.spans.size() - 1));
        } else {
            spans.addAll(0, other.spans);
        }
    }

    public int end() {
        return spans.get(spans.size() - 1)[1];
    }

    /** What takes in a stretch of a text. */
    @FunctionalInterface
    public interface Stretch {
        void take(int start, int end);
    }

    public void eachSpan(Stretch taker) {
        spans.forEach(span -> taker.take(span[0], span[1]));
    }

    /** The piece as it was written. */
    public String written(Text text) {
        return spans.stream()
                .map(span -> text.piece(span[0], span[1]))
                .filter(piece -> !piece.isEmpty())
                .collect(Collectors.joining(" "));
    }

    public Names.@Nullable Sense sense() {
        return sense;
    }

    public void mean(Names.Sense meant) {
        sense = meant;
    }

    /** Means a figure that it does not name; what nobody understood of it is forgotten, and where nothing turns, a side is an end. */
    public void meanToo(Names.Sense meant) {
        sense = meant;
        notes.clear();
        if (!Sided.turns(meant.figure()) && said.remove(Detail.SIDE) instanceof Side side) {
            say(Detail.PLACE, side == Side.LEFT ? Place.LEFT_END : Place.RIGHT_END);
        }
    }

    /** Means what these words say. */
    public void mean(Names.Sense meant, List<Word> by) {
        sense = meant;
        name = List.copyOf(by);
    }

    /** The words that say which figure it is; none if it is none. */
    public List<Word> name() {
        return name;
    }

    public boolean isFigure() {
        return sense != null;
    }

    /** Whether it is one figure of the catalogue, by its name. */
    public boolean means(String figure) {
        return sense != null && sense.figure().equals(figure);
    }

    public boolean isSpin() {
        return sense != null && sense.figure().endsWith("spin");
    }

    /** Says that the piece begins with the figure's name. */
    public void lead() {
        leads = true;
    }

    public boolean leads() {
        return leads;
    }

    /** Says that it is the first of its line. */
    public void startLine() {
        starts = true;
    }

    public boolean startsALine() {
        return starts;
    }

    public void doubt() {
        doubtful = true;
    }

    /** Says that a word beside the figure's name may make it another. */
    public void doubtName(String word) {
        doubtful = true;
        beside = word;
    }

    /** Says what the show calls it. */
    public void call(String showName) {
        called = showName;
    }

    /** Whether it may be another figure. */
    public boolean isOneOfSeveral() {
        return !alternatives.isEmpty() || (sense != null && !sense.choices().isEmpty());
    }

    public void orElse(List<String> figures) {
        alternatives = figures;
    }

    /** Says a thing; where another was said before, that one stays, and the two contradict each other. */
    public void say(Detail detail, Object value) {
        if (detail == Detail.COUNT && ONE.equals(said.get(detail))) {
            said.remove(detail);
        }
        Object before = said.putIfAbsent(detail, value);
        if (before != null && !before.equals(value)) {
            contradicted.add(detail);
        }
    }

    public boolean says(Detail detail) {
        return said.containsKey(detail);
    }

    public boolean saysAnything() {
        return !said.isEmpty();
    }

    public boolean saysOnly(Detail detail) {
        return said.keySet().equals(Set.of(detail));
    }

    public void note(String words) {
        if (!words.isBlank()) {
            notes.add(words);
        }
    }

    /** Notes what is only said of it: however it sounds, it asks for nothing more. */
    public void remark(String words) {
        if (!words.isBlank()) {
            remarks.add(words);
        }
    }

    public void forgetNotes() {
        notes.clear();
    }

    public List<String> notes() {
        return notes;
    }

    public List<Detail> contradicted() {
        return contradicted;
    }

    /** Takes over what another says; where nothing turns, a side is an end. */
    public void take(Draft other) {
        if (sense != null && !Sided.turns(sense.figure()) && other.said.get(Detail.SIDE) instanceof Side side) {
            other.said.remove(Detail.SIDE);
            other.say(Detail.PLACE, side == Side.LEFT ? Place.LEFT_END : Place.RIGHT_END);
        }
        other.said.forEach(this::say);
        contradicted.addAll(other.contradicted);
        notes.addAll(other.notes);
        doubtful |= other.doubtful;
    }

    /** Takes over what another says; its side is the end it is flown at. */
    public void takeWhere(Draft other) {
        Object side = other.said.get(Detail.SIDE);
        other.said.forEach((detail, value) -> {
            if (detail != Detail.SIDE) {
                say(detail, value);
            }
        });
        if (side instanceof Side) {
            say(Detail.PLACE, side == Side.LEFT ? Place.LEFT_END : Place.RIGHT_END);
        }
    }

    /** Takes over what another says in place of what was said before. */
    public void correct(Draft other) {
        other.said.keySet().forEach(said::remove);
        if (other.said.containsKey(Detail.SIDE) || other.said.containsKey(Detail.PLACE)) {
            said.remove(Detail.SIDE);
            said.remove(Detail.PLACE);
        }
        contradicted.removeAll(other.said.keySet());
        take(other);
    }

    /** What is said of a thing; null if nothing is. */
    public @Nullable Object said(Detail detail) {
        return said.get(detail);
    }

    /** Says nothing of a thing any more. */
    public void unsay(Detail detail) {
        said.remove(detail);
        contradicted.remove(detail);
    }

    /** Lets another say what this one says of some things. */
    public void copyTo(Draft other, Set<Detail> things) {
        said.forEach((detail, value) -> {
            if (things.contains(detail)) {
                other.say(detail, value);
            }
        });
    }

    public void dropNotes(Predicate<String> which) {
        notes.removeIf(which);
    }

    /** Ends here, and gives what it took in from there on to another; null if nothing would be left of one of them. */
    public @Nullable Draft splitAt(int at) {
        int[] cut = spans.stream()
                .filter(span -> span[0] < at && at < span[1])
                .findFirst()
                .orElse(null);
        if (cut == null) {
            return null;
        }
        int index = spans.indexOf(cut);
        Draft other = new Draft(at, cut[1]);
        other.spans.addAll(spans.subList(index + 1, spans.size()));
        spans.subList(index + 1, spans.size()).clear();
        cut[1] = at;
        return other;
    }

    /** Whether all of another can be taken over without a contradiction. */
    public boolean hasRoomFor(Draft other) {
        return other.said.entrySet().stream()
                .allMatch(entry ->
                        said.getOrDefault(entry.getKey(), entry.getValue()).equals(entry.getValue()));
    }

    /**
     * The line it has become.
     *
     * @param text the piece as it was written
     * @param nearest the catalogue's names that own words may mean
     */
    public ListLine line(String text, Function<String, List<String>> nearest) {
        Names.Sense meant = sense;
        Double top = (Double) said.get(Detail.TOP_FT);
        boolean rises = meant != null && Tops.rises(meant.figure());
        Stream<String> tops =
                top != null && rises ? Stream.of(String.format(Locale.UK, "top %,.0f ft", top)) : Stream.empty();
        List<String> all = Stream.of(tops, notes.stream(), remarks.stream())
                .flatMap(said -> said)
                .toList();
        Double height = (Double) said.get(Detail.HEIGHT_FT);
        String note = all.isEmpty() ? null : String.join(", ", all);
        boolean flownToo = notes.stream().anyMatch(Draft::asksForMore);
        boolean sure = meant != null
                && meant.choices().isEmpty()
                && alternatives.isEmpty()
                && !doubtful
                && !flownToo
                && contradicted.isEmpty();
        String title = called != null ? called : meant != null ? meant.title() : note == null ? text : note;
        return new ListLine(
                text,
                meant == null ? null : meant.figure(),
                title,
                (Double) said.get(Detail.COUNT),
                (Place) said.get(Detail.PLACE),
                (Side) said.get(Detail.SIDE),
                (Heading) said.get(Detail.HEADING),
                height == null && !rises ? top : height,
                (Double) said.get(Detail.ENTRY_KT),
                (Double) said.get(Detail.SECONDS),
                null,
                (Boolean) said.get(Detail.SMOKE),
                meant == null ? null : note,
                sure,
                sure ? List.of() : choices(meant, title, nearest));
    }

    private static boolean asksForMore(String note) {
        List<Word> words = Words.of(Words.folded(note));
        return Manner.FLOWN.hasAny(words) || Manner.DOUBT.hasAny(words) || hasPoints(words);
    }

    /** "2 of 4" are points of a roll. */
    private static boolean hasPoints(List<Word> words) {
        return IntStream.range(0, words.size() - 2)
                .anyMatch(i -> words.get(i).number() != null
                        && words.get(i + 1).plain().equals("of")
                        && words.get(i + 2).number() != null);
    }

    private List<String> choices(Names.@Nullable Sense meant, String title, Function<String, List<String>> nearest) {
        if (!alternatives.isEmpty()) {
            return alternatives;
        }
        if (meant == null) {
            return nearest.apply(title);
        }
        if (beside == null || !meant.choices().isEmpty()) {
            return meant.choices().isEmpty() ? List.of(meant.figure()) : meant.choices();
        }
        return Stream.concat(Stream.of(meant.figure()), nearest.apply(beside + " " + title).stream())
                .distinct()
                .limit(ListLine.MOST_CHOICES)
                .toList();
    }
}
