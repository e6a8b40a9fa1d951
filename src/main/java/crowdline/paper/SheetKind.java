package crowdline.paper;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of paper. */
public enum SheetKind {
    CARDS("Cue cards", "A card for each figure, four to a page to cut"),
    INTERPRETER("Interpreter's cards", "What is said in another language, four to a page to cut"),
    RUNNING("Running sheet", "What is flown and said when, with the act drawn at the head"),
    PILOT("Pilot's sheet", "What you have of the act, for the pilot to read and sign"),
    QUESTIONS("Questions for the pilot", "What is assumed, as a list of questions"),
    GLOSSARY("Glossary", "Each figure drawn and explained"),
    INCIDENT("Incident page", "The organiser's words, on a page of their own"),
    DEBRIEF("Debrief", "What was flown and said, against the plan");

    private final String title;
    private final String about;

    SheetKind(String title, String about) {
        this.title = title;
        this.about = about;
    }

    public String title() {
        return title;
    }

    /** What it is, in a few words. */
    public String about() {
        return about;
    }

    /** How it is called in commands and in the names of files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind called that. */
    public static Optional<SheetKind> of(String word) {
        return Arrays.stream(values())
                .filter(k -> k.word().equalsIgnoreCase(word.strip()))
                .findFirst();
    }

    /** Whether it is about acts, so that one of them can be chosen. */
    public boolean isOfActs() {
        return this != INCIDENT && this != DEBRIEF;
    }
}
