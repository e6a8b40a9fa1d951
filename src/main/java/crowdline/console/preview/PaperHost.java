package crowdline.console.preview;

import crowdline.paper.SheetKind;
import crowdline.sheet.page.Pages;
import crowdline.show.Show;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** What the preview asks of the rest of the program. On the event thread, which also hears every answer. */
public interface PaperHost {
    /** Nothing is ever made. */
    PaperHost NONE = new PaperHost() {
        @Override
        public void make(Show show, Asked asked, Answer answer) {}

        @Override
        public void save(Pages pages, Path file, Answer answer) {}

        @Override
        public void print(Pages pages, Answer answer) {}

        @Override
        public void stop() {}
    };

    /**
     * What is to be looked at.
     *
     * @param actId the act, or null for all
     * @param variant of that act, or null for the first
     */
    record Asked(
            SheetKind kind,
            @Nullable String actId,
            @Nullable String variant,
            boolean large) {}

    /** What becomes of it. */
    interface Answer {
        /** It is so far. */
        void sofar(int number, int all);

        /** Here are the pages. */
        void made(Pages pages);

        /** It is done, or cannot be done; in a sentence. */
        void said(String sentence);
    }

    /** Makes pages; what was asked for before is stopped. */
    void make(Show show, Asked asked, Answer answer);

    /** Writes pages as a PDF. */
    void save(Pages pages, Path file, Answer answer);

    /** Asks which printer, and prints. */
    void print(Pages pages, Answer answer);

    /** Stops whatever is being made, saved or printed. */
    void stop();
}
