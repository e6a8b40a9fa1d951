package crowdline.console.incident;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Where one is in the words of the page. They are read paragraph by paragraph, and one that is too long for the screen part
 * by part. The place is kept as words already read, so that it stays where it is when the window or the zoom changes.
 */
final class PageReading {
    /** More than are looked at around one place. */
    private static final int REMEMBERED = 16;

    private record Cut(String paragraph, Object room) {}

    private final Map<Cut, List<String>> cuts = new LinkedHashMap<>(32, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Cut, List<String>> eldest) {
            return size() > REMEMBERED;
        }
    };
    private List<String> paragraphs = List.of();
    private Object room = "";
    private Predicate<String> fits = words -> true;
    private int paragraph;
    private int lettersRead;

    /**
     * A part of the words.
     *
     * @param text its words
     * @param paragraph which paragraph it is of, from 1
     * @param paragraphs how many there are
     * @param part which part of that it is, from 1
     * @param parts how many there are
     */
    record Part(String text, int paragraph, int paragraphs, int part, int parts) {

        /** Where that is, such as "2 of 5" or "2 of 5, part 1 of 3"; empty if there is nothing else. */
        String where() {
            List<String> words = new ArrayList<>();
            if (paragraphs > 1) {
                words.add(paragraph + " of " + paragraphs);
            }
            if (parts > 1) {
                words.add("part " + part + " of " + parts);
            }
            return String.join(", ", words);
        }
    }

    /** Begins again at the first words. */
    void begin() {
        paragraph = 0;
        lettersRead = 0;
    }

    /**
     * Reads these paragraphs on a screen with this room.
     *
     * @param newRoom equal for equal rooms
     * @param newFits whether words can be shown there at once
     */
    void on(List<String> newParagraphs, Object newRoom, Predicate<String> newFits) {
        if (!newParagraphs.equals(paragraphs)) {
            paragraphs = List.copyOf(newParagraphs);
            begin();
        }
        room = newRoom;
        fits = newFits;
    }

    /** The words to say now; empty if there are none. */
    Optional<Part> now() {
        return paragraphs.isEmpty() ? Optional.empty() : Optional.of(part(paragraph, index()));
    }

    /** The words after those; empty at the end. */
    Optional<Part> next() {
        if (paragraphs.isEmpty()) {
            return Optional.empty();
        }
        if (index() + 1 < parts(paragraph).size()) {
            return Optional.of(part(paragraph, index() + 1));
        }
        return paragraph + 1 < paragraphs.size() ? Optional.of(part(paragraph + 1, 0)) : Optional.empty();
    }

    /** Goes to the words after these; stays at the last. */
    void on() {
        next().ifPresent(this::goTo);
    }

    /** Goes to the words before these; stays at the first. */
    void back() {
        if (paragraphs.isEmpty()) {
            return;
        }
        if (index() > 0) {
            goTo(part(paragraph, index() - 1));
        } else if (paragraph > 0) {
            goTo(part(paragraph - 1, parts(paragraph - 1).size() - 1));
        }
    }

    private void goTo(Part part) {
        paragraph = part.paragraph() - 1;
        lettersRead = parts(paragraph).subList(0, part.part() - 1).stream()
                .mapToInt(PageReading::withSpace)
                .sum();
    }

    private Part part(int of, int index) {
        List<String> parts = parts(of);
        return new Part(parts.get(index), of + 1, paragraphs.size(), index + 1, parts.size());
    }

    /** The part in which the letter after those read stands. */
    private int index() {
        List<String> parts = parts(paragraph);
        int letters = 0;
        for (int i = 0; i < parts.size(); i++) {
            letters += withSpace(parts.get(i));
            if (lettersRead < letters) {
                return i;
            }
        }
        return parts.size() - 1;
    }

    /** Letters of a part with the space that stands between it and the next. */
    private static int withSpace(String part) {
        return part.length() + 1;
    }

    private List<String> parts(int of) {
        return cuts.computeIfAbsent(new Cut(paragraphs.get(of), room), cut -> Parts.of(cut.paragraph(), fits));
    }
}
