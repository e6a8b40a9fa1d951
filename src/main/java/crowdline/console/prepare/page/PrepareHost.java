package crowdline.console.prepare.page;

import crowdline.edit.Change;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.Edit;
import crowdline.edit.act.Figures;
import crowdline.edit.act.FirstDraft;
import crowdline.edit.act.Variants;
import crowdline.edit.day.Aircrafts;
import crowdline.edit.day.Days;
import crowdline.list.line.FigureList;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.aircraft.Kinds;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Pace;
import crowdline.storage.show.IncidentTemplate;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What the Prepare place asks of the rest of the program. Each returns at once; what takes time answers on the event thread. */
public interface PrepareHost {
    /** Reads nothing, and makes no edit. */
    PrepareHost NONE = new PrepareHost() {
        private final Catalogue nothing = new Catalogue(List.of());

        @Override
        public void read(Show show, String list, Consumer<FigureList> answer) {}

        @Override
        public <T> void read(Supplier<T> reading, Consumer<T> answer) {}

        @Override
        public void text(Path file, Consumer<String> answer, Consumer<String> refused) {}

        @Override
        public void make(Show show, Edit edit, Consumer<Change> made, Consumer<String> refused) {
            refused.accept("No show is open to be edited; open one first");
        }

        @Override
        public Kinds kinds() {
            return new Kinds(List.of());
        }

        @Override
        public Catalogue catalogue() {
            return nothing;
        }

        @Override
        public AddAct adding() {
            return new AddAct(nothing, drafting());
        }

        @Override
        public FirstDraft drafting() {
            return new FirstDraft(nothing, Pace.DEFAULT, 0);
        }

        @Override
        public IncidentTemplate incidentTemplate() {
            return IncidentTemplate.shipped();
        }

        @Override
        public Figures figures() {
            return new Figures(nothing);
        }
    };

    /**
     * Reads a pilot's list; only the newest of several is read.
     *
     * @param show whose own figures it may name
     */
    void read(Show show, String list, Consumer<FigureList> answer);

    /**
     * Reads a file of text, such as a pilot's list or a table.
     *
     * @param refused told in a sentence why it is none
     */
    void text(Path file, Consumer<String> answer, Consumer<String> refused);

    /**
     * Reads something else that was pasted, as long as that takes; only the newest of several is read.
     *
     * @param reading done off the event thread
     */
    <T> void read(Supplier<T> reading, Consumer<T> answer);

    /**
     * Makes an edit of a show.
     *
     * @param made told the change
     * @param refused told why it cannot be, in a sentence
     */
    void make(Show show, Edit edit, Consumer<Change> made, Consumer<String> refused);

    /** The kinds of aircraft. */
    Kinds kinds();

    /** The shipped figures. */
    Catalogue catalogue();

    /** Adds acts, with words for the speaker of the moment. */
    AddAct adding();

    /** Drafts words, for the speaker of the moment. */
    FirstDraft drafting();

    /** Edits figures. */
    Figures figures();

    /** Edits the ways an act can be flown. */
    default Variants variants() {
        return new Variants(catalogue());
    }

    /** Edits the day and the place. */
    default Days days() {
        return new Days(catalogue());
    }

    /** Edits what flies. */
    default Aircrafts aircrafts() {
        return new Aircrafts(catalogue());
    }

    /** What is to be known of a speaker before anything is given to them, in a few words; empty if nothing. */
    default String noteOn(Speaker speaker, Speakers all) {
        return speaker.note(true);
    }

    /** Words to begin an incident page with, agreed with nobody; what must be done before they are used. */
    IncidentTemplate incidentTemplate();
}
