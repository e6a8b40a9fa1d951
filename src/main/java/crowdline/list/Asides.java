package crowdline.list;

import java.util.ArrayList;
import java.util.List;

/** What stands around a list. */
final class Asides {
    /** A stretch of the text. */
    private record Span(int start, int end) {}

    private final Text text;
    private final List<Span> notes = new ArrayList<>();
    private final List<Span> told = new ArrayList<>();
    private boolean isParted;
    private boolean isLast;

    Asides(Text text) {
        this.text = text;
    }

    /** Adds a stretch; what goes on with the same line joins the note before. */
    void add(int start, int end) {
        isLast = true;
        Span last = notes.isEmpty() ? null : notes.get(notes.size() - 1);
        if (last != null && last.end() == start && isOneLine(last.start(), end)) {
            notes.set(notes.size() - 1, new Span(last.start(), end));
        } else {
            notes.add(new Span(start, end));
        }
    }

    /** Whether nothing of the list came since. */
    boolean isLast() {
        return isLast;
    }

    void listGoesOn() {
        isLast = false;
    }

    /** Says whether the text takes leave here; once it did, it has. */
    void part(boolean takesLeave) {
        isParted |= takesLeave;
    }

    boolean isParted() {
        return isParted;
    }

    private boolean isOneLine(int start, int end) {
        return text.written().substring(start, end).strip().indexOf('\n') < 0;
    }

    /** Remembers that a stretch names a figure. */
    void addTold(int start, int end) {
        told.add(new Span(start, end));
    }

    /** All of them as they were written. */
    List<String> written() {
        return notes.stream()
                .map(span -> text.written().substring(span.start(), span.end()).strip())
                .map(note -> note.replaceFirst("^[\\s,;>]+", ""))
                .filter(note -> !note.isBlank())
                .toList();
    }

    /** Those that name a figure. */
    List<String> told() {
        return told.stream().map(span -> text.piece(span.start(), span.end())).toList();
    }
}
