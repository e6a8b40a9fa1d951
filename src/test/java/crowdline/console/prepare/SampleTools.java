package crowdline.console.prepare;

import crowdline.console.edit.Editing;
import crowdline.console.passes.PassesHost;
import crowdline.console.prepare.page.Editor;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.prepare.page.Tools;
import crowdline.console.window.NamedAction;
import crowdline.draft.DraftWords;
import crowdline.edit.Change;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.act.Figures;
import crowdline.edit.act.FirstDraft;
import crowdline.list.ListReader;
import crowdline.list.line.FigureList;
import crowdline.measure.Measures;
import crowdline.show.Show;
import crowdline.show.aircraft.Kinds;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Pace;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.IncidentTemplate;
import crowdline.storage.show.KindsFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;

/** A host that answers at once, an editing of a show, and what they said. */
public final class SampleTools implements PrepareHost {
    public static final Catalogue CATALOGUE = CatalogueFile.shipped();

    private static final Action NOTHING = new NamedAction("nothing", () -> {});

    public final Editing editing = new Editing();
    /** Does what is to be read. */
    public Consumer<Runnable> reading = Runnable::run;
    /** Makes what is to be edited. */
    public Consumer<Runnable> making = Runnable::run;

    public final List<String> refused = new ArrayList<>();
    /** What speeds and heights were asked to be read in. */
    final List<Measures> read = new ArrayList<>();

    public final Tools tools = new Tools(
            new Editor(editing, () -> this, refused::add),
            () -> this,
            () -> PassesHost.NONE,
            () -> {},
            command -> NOTHING,
            read::add);

    public SampleTools(Show show) {
        editing.open("day.json", show);
    }

    /** With no show and a host that does nothing. */
    static Tools idle() {
        return new Tools(
                new Editor(new Editing(), () -> PrepareHost.NONE, why -> {}),
                () -> PrepareHost.NONE,
                () -> PassesHost.NONE,
                () -> {},
                command -> NOTHING,
                measures -> {});
    }

    @Override
    public void read(Show show, String list, Consumer<FigureList> answer) {
        answer.accept(new ListReader(CATALOGUE).read(list));
    }

    @Override
    public <T> void read(Supplier<T> reading, Consumer<T> answer) {
        this.reading.accept(() -> answer.accept(reading.get()));
    }

    @Override
    public void text(Path file, Consumer<String> answer, Consumer<String> no) {
        answer.accept("loop, slow roll from " + file);
    }

    @Override
    public void make(Show show, Edit edit, Consumer<Change> made, Consumer<String> no) {
        making.accept(() -> {
            try {
                made.accept(edit.of(show));
            } catch (CannotBe e) {
                no.accept(e.why());
            }
        });
    }

    @Override
    public Kinds kinds() {
        return KindsFile.shipped();
    }

    @Override
    public Catalogue catalogue() {
        return CATALOGUE;
    }

    @Override
    public AddAct adding() {
        return new AddAct(CATALOGUE, drafting());
    }

    @Override
    public FirstDraft drafting() {
        return new FirstDraft(CATALOGUE, Pace.DEFAULT, DraftWords.SHARE);
    }

    @Override
    public IncidentTemplate incidentTemplate() {
        return IncidentTemplate.shipped();
    }

    @Override
    public Figures figures() {
        return new Figures(CATALOGUE);
    }
}
