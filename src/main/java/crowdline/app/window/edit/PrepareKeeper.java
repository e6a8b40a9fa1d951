package crowdline.app.window.edit;

import crowdline.console.prepare.page.PrepareHost;
import crowdline.draft.DraftWords;
import crowdline.edit.Change;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.act.Figures;
import crowdline.edit.act.FirstDraft;
import crowdline.list.ListReader;
import crowdline.list.ListText;
import crowdline.list.line.FigureList;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.aircraft.Kinds;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.IncidentTemplate;
import crowdline.storage.show.KindsFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Reads lists and makes edits on a thread of its own, and answers on the event thread. */
public final class PrepareKeeper implements PrepareHost {
    private static final System.Logger LOG = System.getLogger(PrepareKeeper.class.getName());

    /** More than any list, and than a table of every remark of a day. */
    private static final int MOST_BYTES = 1_000_000;

    private final Supplier<Catalogue> catalogue;
    private final Supplier<Paces> paces;
    private final Executor work;
    private final Kinds kinds = KindsFile.shipped();
    /** Reads the newest that was pasted and nobody has read yet. */
    private final AtomicReference<@Nullable Runnable> waiting = new AtomicReference<>();
    /** On the event thread only. */
    private @Nullable Figures figures;
    /** On the thread of the work only: for the catalogue of the show that was read for last. */
    private @Nullable Reader reader;
    /** On the thread of the work only: for the speaker of the moment. */
    private @Nullable Following following;

    private record Reader(Catalogue catalogue, ListReader lists) {}

    private record Following(Catalogue catalogue, Pace pace, FirstDraft drafts) {}

    /**
     * @param paces of the moment
     * @param work one thread, on which nothing else takes long
     */
    public PrepareKeeper(Supplier<Catalogue> catalogue, Supplier<Paces> paces, Executor work) {
        this.catalogue = catalogue;
        this.paces = paces;
        this.work = work;
    }

    @Override
    public String noteOn(Speaker speaker, Speakers all) {
        return speaker.note(paces.get().isTimed(speaker, all));
    }

    @Override
    public void read(Show show, String list, Consumer<FigureList> answer) {
        read(() -> reader(show).read(list), answer);
    }

    @Override
    public void text(Path file, Consumer<String> answer, Consumer<String> refused) {
        work.execute(() -> {
            try {
                String text = text(file);
                SwingUtilities.invokeLater(() -> answer.accept(text));
            } catch (ListText.NoText e) {
                SwingUtilities.invokeLater(() -> refused.accept(e.inPlaceOf(String.valueOf(file.getFileName()))));
            } catch (IOException e) {
                LOG.log(System.Logger.Level.INFO, "{0} could not be read: {1}", file, e.toString());
                SwingUtilities.invokeLater(() -> refused.accept(
                        file.getFileName() + " cannot be read; check that it is there and that you may read it"));
            }
        });
    }

    private static String text(Path file) throws IOException, ListText.NoText {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new ListText.NoText("larger than a list or a table of a day");
            }
            return ListText.of(bytes);
        }
    }

    @Override
    public <T> void read(Supplier<T> reading, Consumer<T> answer) {
        Runnable asked = () -> {
            T read = reading.get();
            SwingUtilities.invokeLater(() -> answer.accept(read));
        };
        if (waiting.getAndSet(asked) == null) {
            work.execute(() -> {
                Runnable newest = waiting.getAndSet(null);
                if (newest != null) {
                    newest.run();
                }
            });
        }
    }

    private ListReader reader(Show show) {
        Catalogue all = catalogue.get().with(show.figures());
        Reader known = reader;
        if (known == null || !known.catalogue().entries().equals(all.entries())) {
            known = new Reader(all, new ListReader(all));
            reader = known;
        }
        return known.lists();
    }

    @Override
    public void make(Show show, Edit edit, Consumer<Change> made, Consumer<String> refused) {
        work.execute(() -> {
            try {
                Change change = following().followed(edit).of(show);
                SwingUtilities.invokeLater(() -> made.accept(change));
            } catch (CannotBe e) {
                SwingUtilities.invokeLater(() -> refused.accept(e.why()));
            } catch (RuntimeException e) {
                LOG.log(System.Logger.Level.ERROR, "An edit failed", e);
                SwingUtilities.invokeLater(() -> refused.accept(
                        "This went wrong inside the program, so nothing was changed; the log has the reason"));
            }
        });
    }

    /** First drafts that follow edits: the same from edit to edit, as it knows what it drafted last. */
    private FirstDraft following() {
        Catalogue shipped = catalogue.get();
        Pace pace = paces.get().own();
        Following known = following;
        if (known == null || !known.catalogue().equals(shipped) || !known.pace().equals(pace)) {
            known = new Following(shipped, pace, new FirstDraft(shipped, pace, DraftWords.SHARE));
            following = known;
        }
        return known.drafts();
    }

    @Override
    public Kinds kinds() {
        return kinds;
    }

    @Override
    public Catalogue catalogue() {
        return catalogue.get();
    }

    @Override
    public AddAct adding() {
        return new AddAct(catalogue.get(), drafting());
    }

    @Override
    public FirstDraft drafting() {
        return new FirstDraft(catalogue.get(), paces.get().own(), DraftWords.SHARE);
    }

    @Override
    public IncidentTemplate incidentTemplate() {
        return IncidentTemplate.shipped();
    }

    @Override
    public Figures figures() {
        Figures known = figures;
        if (known == null) {
            known = new Figures(catalogue.get());
            figures = known;
        }
        return known;
    }
}
