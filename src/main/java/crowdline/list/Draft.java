package crowdline.list;

import crowdline.show.figure.Placing.Heading;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A line while it is being read. */
final class Draft {
    private final Map<Detail, Object> said = new EnumMap<>(Detail.class);
    private final List<Detail> contradicted = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<int[]> spans = new ArrayList<>();
    private Names.@Nullable Sense sense;
    private List<Word> name = List.of();
    private boolean doubtful;
    private @Nullable String beside;
    private boolean leads;
    private boolean starts;
    private List<String> alternatives = List.of();

    Draft(int start, int end) {
        spans.add(new int[] {start, end});
    }

    int start() {
        return spans.get(0)[0];
    }

    /** Begins earlier. */
    void beginAt(int start) {
        spans.get(0)[0] = start;
    }

    /** Takes in a further stretch of the text. */
    void takeIn(int start, int end) {
        int[] last = spans.get(spans.size() - 1);
        if (last[1] == start) {
            last[1] = end;
        } else {
            spans.add(new int[] {start, end});
        }
    }

    /** Takes in what another took in before this one. */
    void takeInBefore(Draft other) {
        int[] last = other.spans.get(other.spans.size() - 1);
        if (last[1] == start()) {
            beginAt(last[0]);
            spans.addAll(0, other.spans.subList(0, other.spans.size() - 1));
        } else {
            spans.addAll(0, other.spans);
        }
    }

    int end() {
        return spans.get(spans.size() - 1)[1];
    }

    /** What takes in a stretch of a text. */
    @FunctionalInterface
    interface Stretch {
        void take(int start, int end);
    }

    void eachSpan(Stretch taker) {
        spans.forEach(span -> taker.take(span[0], span[1]));
    }

    /** The piece as it was written. */
    String written(Text text) {
        return spans.stream()
                .map(span -> text.piece(span[0], span[1]))
                .filter(piece -> !piece.isEmpty())
                .collect(Collectors.joining(" "));
    }

    Names.@Nullable Sense sense() {
        return sense;
    }

    void mean(Names.Sense meant) {
        sense = meant;
    }

    /** Means what these words say. */
    void mean(Names.Sense meant, List<Word> by) {
        sense = meant;
        name = List.copyOf(by);
    }

    /** The words that say which figure it is; none if it is none. */
    List<Word> name() {
        return name;
    }

    boolean isFigure() {
        return sense != null;
    }

    /** Says that the piece begins with the figure's name. */
    void lead() {
        leads = true;
    }

    boolean leads() {
        return leads;
    }

    /** Says that it is the first of its line. */
    void startLine() {
        starts = true;
    }

    boolean startsALine() {
        return starts;
    }

    void doubt() {
        doubtful = true;
    }

    /** Says that a word beside the figure's name may make it another. */
    void doubtName(String word) {
        doubtful = true;
        beside = word;
    }

    /** Whether it may be another figure. */
    boolean isOneOfSeveral() {
        return !alternatives.isEmpty() || (sense != null && !sense.choices().isEmpty());
    }

    void orElse(List<String> figures) {
        alternatives = figures;
    }

    /** Says a thing; where another was said before, that one stays, and the two contradict each other. */
    void say(Detail detail, Object value) {
        Object before = said.putIfAbsent(detail, value);
        if (before != null && !before.equals(value)) {
            contradicted.add(detail);
        }
    }

    boolean says(Detail detail) {
        return said.containsKey(detail);
    }

    boolean saysAnything() {
        return !said.isEmpty();
    }

    boolean saysOnly(Detail detail) {
        return said.keySet().equals(Set.of(detail));
    }

    void note(String words) {
        if (!words.isBlank()) {
            notes.add(words);
        }
    }

    void forgetNotes() {
        notes.clear();
    }

    List<String> notes() {
        return notes;
    }

    List<Detail> contradicted() {
        return contradicted;
    }

    /** Takes over what another says; where nothing turns, a side is an end. */
    void take(Draft other) {
        if (sense != null && !Sided.turns(sense.figure()) && other.said.get(Detail.SIDE) instanceof Side side) {
            other.said.remove(Detail.SIDE);
            other.say(Detail.PLACE, side == Side.LEFT ? Place.LEFT_END : Place.RIGHT_END);
        }
        other.said.forEach(this::say);
        contradicted.addAll(other.contradicted);
        notes.addAll(other.notes);
        doubtful |= other.doubtful;
    }

    /** Whether all of another can be taken over without a contradiction. */
    boolean hasRoomFor(Draft other) {
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
    ListLine line(String text, Function<String, List<String>> nearest) {
        Names.Sense meant = sense;
        Double top = (Double) said.get(Detail.TOP_FT);
        boolean rises = meant != null && Tops.rises(meant.figure());
        List<String> all = top != null && rises
                ? Stream.concat(Stream.of(String.format(Locale.UK, "top %,.0f ft", top)), notes.stream())
                        .toList()
                : notes;
        Double height = (Double) said.get(Detail.HEIGHT_FT);
        String note = all.isEmpty() ? null : String.join(", ", all);
        boolean flownToo = notes.stream().anyMatch(Draft::asksForMore);
        boolean sure = meant != null
                && meant.choices().isEmpty()
                && alternatives.isEmpty()
                && !doubtful
                && !flownToo
                && contradicted.isEmpty();
        String title = meant != null ? meant.title() : note == null ? text : note;
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
