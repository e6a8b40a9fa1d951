package crowdline.app.demo;

import crowdline.app.shell.Complaints;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Screen;
import crowdline.app.shell.Terminal;
import crowdline.app.window.edit.BasisForWords;
import crowdline.app.window.edit.RemarkStandings;
import crowdline.app.window.edit.ShowFacts;
import crowdline.app.window.time.LoadedPredictions;
import crowdline.app.window.time.PaceKeeper;
import crowdline.console.edit.Editing;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.pace.RemarksToTime;
import crowdline.console.pictures.AnnouncementPicture;
import crowdline.console.pictures.Pictures;
import crowdline.console.pictures.PrintPicture;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.words.RemarkDraft;
import crowdline.console.words.WordsModel;
import crowdline.console.words.WordsPlan;
import crowdline.console.words.WordsView;
import crowdline.flight.Workers;
import crowdline.loaded.ActPlans;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.measure.Measures;
import crowdline.paper.NothingOnPaper;
import crowdline.paper.Paper;
import crowdline.paper.SheetKind;
import crowdline.paper.Wanted;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Pages;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Paces;
import crowdline.speech.plain.ActReading;
import crowdline.speech.say.Spoken;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.IncidentTemplate;
import crowdline.storage.show.TermsFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Draws every screen with the demo show. */
@Command(
        name = "pictures",
        mixinStandardHelpOptions = true,
        description = "Draws every screen with the demo show, in every theme, into PNG files.")
public final class PicturesCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Workers workers;
    private final Folders folders;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "The folder to draw into.")
    private @Nullable Path out;

    public PicturesCommand(Terminal terminal, Folders folders, Workers workers) {
        this.workers = workers;
        this.terminal = terminal;
        this.folders = folders;
    }

    /** The words of the first figure that has something to explain, with a trade word just typed into them. */
    private static WordsModel words(LoadedShow loaded, Catalogue catalogue) {
        Show show = loaded.show();
        Editing editing = new Editing();
        editing.open("the demo show", show);
        WordsModel model = new WordsModel(editing, BasisForWords.basis(() -> loaded, catalogue, loaded::paces));
        model.planned(new WordsPlan(
                RemarkStandings.of(
                        ActPlans.of(loaded, show.acts(), act -> act.variants().get(0))),
                new ActReading(new Spoken(show.sayAs())::expand).all(show)));
        model.computed(ShowFacts.of(loaded));
        Act act = show.acts().get(0);
        Figure told = Collections.max(
                act.figures().stream().filter(f -> f.elements() != null).toList(),
                Comparator.comparingInt(f -> f.remarks().size()));
        model.choosePlace(act.id(), told.id());
        model.choose(1);
        model.view()
                .page()
                .map(WordsView.RemarkPage::draft)
                .ifPresent(d -> model.type(new RemarkDraft(
                        d.kind(),
                        d.text() + " The rudder keeps it straight.",
                        d.shortText(),
                        d.weight(),
                        d.at(),
                        d.until(),
                        d.earliestS(),
                        d.latestS(),
                        d.once(),
                        d.speaker(),
                        d.other())));
        return model;
    }

    private static Pages cards(LoadedShow loaded) {
        try {
            Wanted wanted = new Wanted(
                    loaded, loaded.show().acts(), act -> act.variants().get(0), false, false, null, Measures.USUAL);
            return Paper.of(SheetKind.CARDS, wanted, Counting.UNHEARD);
        } catch (NothingOnPaper e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public Integer call() throws ShowFileException {
        Path to = out;
        String why = Screen.whyNone();
        if (to == null || why != null) {
            terminal.complain(why + ", and pictures of windows need one");
            return ExitCode.UNUSABLE;
        }
        Catalogue catalogue = CatalogueFile.shipped();
        ShowLoader.Result result = new ShowLoader(() -> catalogue, () -> Paces.DEFAULT, folders.passes(), workers)
                .load(folders.demoShow(), LoadedShow.FLIGHTS);
        LoadedShow loaded = result.loaded();
        if (loaded == null) {
            terminal.complain("the demo show has errors; crowdline check lists them");
            return ExitCode.UNUSABLE;
        }
        LookAndFeel.loadType();
        Pictures.Screens screens = new Pictures.Screens(
                new DemoMoments(loaded).views(),
                DemoMoments.ordered(loaded),
                new AnnouncementPicture(
                        DemoMoments.ordered(loaded).live(),
                        IncidentTemplate.shipped().announcements()),
                DemoMoments.second(loaded),
                new DemoWalks(loaded).views(),
                new DemoDebrief(loaded).views(),
                LoadedPredictions.view(loaded, result.findings()),
                DemoEdited.of(loaded, result.findings()),
                () -> words(loaded, catalogue),
                GlossaryView.drawn(catalogue, TermsFile.shipped()),
                RemarksToTime.of(
                        PaceKeeper.texts(loaded.show()),
                        new Spoken(loaded.show().sayAs())),
                new PrintPicture(loaded.show(), cards(loaded)));
        try {
            List<Path> files = Pictures.renderAll(to, screens);
            terminal.line(files.size() + " pictures in " + to);
            return ExitCode.FINE;
        } catch (IOException e) {
            throw Complaints.notWritten("the pictures cannot be written", to);
        }
    }
}
