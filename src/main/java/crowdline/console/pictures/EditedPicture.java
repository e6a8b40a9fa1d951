package crowdline.console.pictures;

import crowdline.console.ConsolePane;
import crowdline.console.keys.Command;
import crowdline.console.passes.PassesHost;
import crowdline.console.place.Place;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.edit.Change;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.Edit;
import crowdline.edit.act.Figures;
import crowdline.edit.act.FirstDraft;
import crowdline.list.ListReader;
import crowdline.list.line.FigureList;
import crowdline.show.Show;
import crowdline.show.aircraft.Kinds;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Pace;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.IncidentTemplate;
import crowdline.storage.show.KindsFile;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The pages of Prepare as a show is edited in them.
 *
 * @param show the show as edited
 * @param view what is predicted of it
 * @param actId the act that is chosen
 */
public record EditedPicture(Show show, PrepareView view, String actId) {
    private static final String LIST = """
            run in from the left
            loop at 600 ft
            stall turn, right end
            upside down pas
            2 turn spin
            something nobody has seen
            """;

    Map<String, Consumer<ConsolePane>> screens() {
        Map<String, Consumer<ConsolePane>> all = new LinkedHashMap<>();
        all.put("prepare-edited", pane -> on(pane, Command.PAGE_ACTS));
        all.put("prepare-show", pane -> on(pane, Command.PAGE_SHOW));
        all.put("prepare-aircraft", pane -> on(pane, Command.PAGE_AIRCRAFT));
        all.put("prepare-people", pane -> on(pane, Command.PAGE_PEOPLE));
        all.put("prepare-announcements", pane -> on(pane, Command.PAGE_ANNOUNCEMENTS));
        all.put("prepare-duties", pane -> on(pane, Command.PAGE_DUTIES));
        all.put("prepare-list", pane -> {
            on(pane, Command.PAGE_ACTS);
            pane.prepare().pasteList(LIST);
        });
        return all;
    }

    private void on(ConsolePane pane, Command page) {
        pane.go(Place.PREPARE);
        pane.prepare()
                .serve(PassesHost.NONE, new AtOnce(CatalogueFile.shipped()), () -> {}, mark -> {}, measures -> {});
        pane.editing().open("show", show);
        pane.showPrepare(view);
        pane.prepare().chooseAct(actId);
        pane.prepare().commands().carryOut(page);
    }

    /** Answers at once, so that a picture shows it. */
    private record AtOnce(Catalogue catalogue) implements PrepareHost {
        @Override
        public void read(Show show, String list, Consumer<FigureList> answer) {
            answer.accept(new ListReader(catalogue.with(show.figures())).read(list));
        }

        @Override
        public <T> void read(Supplier<T> reading, Consumer<T> answer) {
            answer.accept(reading.get());
        }

        @Override
        public void text(Path file, Consumer<String> answer, Consumer<String> refused) {}

        @Override
        public void make(Show show, Edit edit, Consumer<Change> made, Consumer<String> refused) {
            refused.accept("nothing is edited in a picture");
        }

        @Override
        public Kinds kinds() {
            return KindsFile.shipped();
        }

        @Override
        public AddAct adding() {
            return new AddAct(catalogue, drafting());
        }

        @Override
        public FirstDraft drafting() {
            return new FirstDraft(catalogue, Pace.DEFAULT, 0);
        }

        @Override
        public Figures figures() {
            return new Figures(catalogue);
        }

        @Override
        public IncidentTemplate incidentTemplate() {
            return IncidentTemplate.shipped();
        }
    }
}
