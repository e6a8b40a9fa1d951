package crowdline.list.split;

import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What stands around a list. */
public final class Asides {
    /** A stretch of the text. */
    private record Span(int start, int end) {}

    /**
     * What was written.
     *
     * @param start where in the text it begins
     */
    public record Stretch(String text, int start) {}

    private final Text text;
    private final List<Span> notes = new ArrayList<>();
    private final List<Span> told = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();
    private boolean isParted;
    private boolean isLast;

    public Asides(Text text) {
        this.text = text;
    }

    /** Adds a stretch; what goes on with the same line joins the note before. */
    public void add(int start, int end) {
        isLast = true;
        Span last = notes.isEmpty() ? null : notes.get(notes.size() - 1);
        if (last != null && last.end() == start && isOneLine(last.start(), end)) {
            notes.set(notes.size() - 1, new Span(last.start(), end));
        } else {
            notes.add(new Span(start, end));
        }
    }

    /** Remembers what to ask of whoever wrote it, in a sentence. */
    public void ask(String question) {
        asked.add(question);
    }

    /** What to ask, in sentences. */
    public List<String> asked() {
        return asked;
    }

    /** Whether nothing of the list came since. */
    public boolean isLast() {
        return isLast;
    }

    public void listGoesOn() {
        isLast = false;
    }

    /** Says whether the text takes leave here; once it did, it has. */
    public void part(boolean takesLeave) {
        isParted |= takesLeave;
    }

    public boolean isParted() {
        return isParted;
    }

    private boolean isOneLine(int start, int end) {
        return text.written().substring(start, end).strip().indexOf('\n') < 0;
    }

    /** Remembers that a stretch names a figure. */
    public void addTold(int start, int end) {
        told.add(new Span(start, end));
    }

    /** All of them as they were written, in their order. */
    public List<Stretch> written() {
        return notes.stream()
                .sorted(Comparator.comparingInt(Span::start))
                .map(span -> new Stretch(
                        text.written()
                                .substring(span.start(), span.end())
                                .strip()
                                .replaceFirst("^[\\s,;>]+", ""),
                        span.start()))
                .filter(stretch -> !stretch.text().isBlank())
                .toList();
    }

    /** Those that name a figure. */
    public List<String> told() {
        return told.stream().map(span -> text.piece(span.start(), span.end())).toList();
    }
}
