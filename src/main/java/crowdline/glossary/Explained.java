package crowdline.glossary;

import crowdline.show.Term;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** One thing that the glossary explains. */
public sealed interface Explained {
    /** Title of {@link #sayIt}. */
    String SAY_IT = "Say it";
    /** Title of {@link #source}. */
    String SOURCE = "Where this comes from";

    String name();

    List<String> aliases();

    /** What it belongs with. */
    String group();

    /** Everything said of it but how to say it and where it comes from, without what is not said: what to look at first. */
    List<Section> sections();

    /** How to say its name, where a reader would get it wrong; else empty. */
    String sayIt();

    /** Where its texts come from; empty if nobody says. */
    String source();

    /** Everything said of it, as {@link #sections} without their titles. */
    default List<String> texts() {
        return sections().stream().map(Section::text).toList();
    }

    /** A title and its text. */
    record Section(String title, String text) {}

    /** A figure. */
    record OfFigure(CatalogueEntry entry) implements Explained {
        @Override
        public String name() {
            return entry.name();
        }

        @Override
        public List<String> aliases() {
            return entry.aliases();
        }

        @Override
        public String group() {
            return entry.family();
        }

        @Override
        public List<Section> sections() {
            return said(
                    new Section("Look for", entry.lookFor()),
                    new Section("What it is", entry.whatItIs()),
                    new Section("Why it is hard", entry.whyHard()),
                    new Section("Hands and feet", entry.handsAndFeet()),
                    new Section("What the pilot feels", entry.pilotFeels()),
                    new Section("Easily mixed up with", entry.mixUps()));
        }

        @Override
        public String sayIt() {
            return entry.sayIt();
        }

        @Override
        public String source() {
            return Objects.requireNonNullElse(entry.source(), "");
        }
    }

    /** A word. */
    record OfTerm(Term term) implements Explained {
        @Override
        public String name() {
            return term.name();
        }

        @Override
        public List<String> aliases() {
            return term.aliases();
        }

        @Override
        public String group() {
            return term.group();
        }

        @Override
        public List<Section> sections() {
            return said(new Section("What it is", term.whatItIs()), new Section("At the show", term.atTheShow()));
        }

        @Override
        public String sayIt() {
            return term.sayIt();
        }

        @Override
        public String source() {
            return Objects.requireNonNullElse(term.source(), "");
        }
    }

    private static List<Section> said(Section... sections) {
        return Stream.of(sections).filter(section -> !section.text().isBlank()).toList();
    }
}
