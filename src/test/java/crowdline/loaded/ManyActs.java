package crowdline.loaded;

import crowdline.flight.Workers;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Predicts a demo show with its acts many times over, in a process whose memory does not hold every sample of it. */
final class ManyActs {
    private static final int TIMES = 20;

    private ManyActs() {}

    /** Says how many seconds were predicted, and whether the first act still has every sample. */
    public static void main(String[] args) throws Exception {
        Show demo = ShowFile.soundBefore(Files.readAllBytes(Path.of(args[0]))).orElseThrow();
        List<Act> acts = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            for (Act act : demo.acts()) {
                acts.add(again(act, i));
            }
        }
        Show many = demo.withActs(acts, demo.remarks());
        LoadedShow loaded = new LoadedShow(many, CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, 1);
        loaded.predictAll((number, all) -> {});
        double totalS = 0;
        for (Act act : acts) {
            totalS += first(loaded, act).outline().totalS();
        }
        int samples = first(loaded, acts.get(0)).flight().samples().size();
        int last = first(loaded, acts.get(acts.size() - demo.acts().size()))
                .flight()
                .samples()
                .size();
        System.out.printf("%.0f s, %s%n", totalS, samples > 1 && samples == last ? "every sample" : "samples missing");
    }

    private static Prediction first(LoadedShow loaded, Act act) {
        return loaded.prediction(act.id(), act.variants().get(0).name()).orElseThrow();
    }

    private static Act again(Act act, int number) {
        return new Act(
                act.id() + "-" + number,
                act.title(),
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                act.entry(),
                act.figures(),
                act.variants(),
                act.remarks());
    }
}
