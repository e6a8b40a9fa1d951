package crowdline.app.window.paper;

import crowdline.console.preview.PaperHost;
import crowdline.loaded.LoadedShow;
import crowdline.measure.Measures;
import crowdline.paper.NothingOnPaper;
import crowdline.paper.Paper;
import crowdline.paper.Wanted;
import crowdline.running.RunningShow;
import crowdline.running.WorkerThreads;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.PagePdf;
import crowdline.sheet.page.PagePrint;
import crowdline.sheet.page.Pages;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.ShowFileException;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Makes, saves and prints paper on a thread of its own, one thing at a time; a new wish for pages stops the one before. */
public final class PaperKeeper implements PaperHost {
    private static final System.Logger LOG = System.getLogger(PaperKeeper.class.getName());

    private final Supplier<Catalogue> catalogue;
    private final Supplier<@Nullable RunningShow> running;
    private final Supplier<Paces> paces;
    private final Supplier<Wanted.@Nullable Flown> flown;
    private final Supplier<Measures> measures;
    private final WorkerThreads flights;
    private final Executor work;
    /** The wish that is still of interest. */
    private final AtomicInteger wish = new AtomicInteger();
    /** On the thread only: the show that pages were made of last. */
    private @Nullable LoadedShow made;

    /**
     * @param flown what was flown of the running show, asked for on the event thread
     * @param measures what speeds and heights are told in
     * @param work the thread
     */
    public PaperKeeper(
            Supplier<Catalogue> catalogue,
            Supplier<@Nullable RunningShow> running,
            Supplier<Paces> paces,
            Supplier<Wanted.@Nullable Flown> flown,
            Supplier<Measures> measures,
            WorkerThreads flights,
            Executor work) {
        this.catalogue = catalogue;
        this.running = running;
        this.paces = paces;
        this.flown = flown;
        this.measures = measures;
        this.flights = flights;
        this.work = work;
    }

    private interface Work {
        void done(Counting count) throws NothingOnPaper, IOException, PrinterException;
    }

    /** Does it on the thread, unless it is stopped before. */
    private void begin(Answer answer, String failed, Work doing) {
        int mine = wish.incrementAndGet();
        Counting count = (number, all) -> {
            if (mine != wish.get()) {
                throw new CancellationException();
            }
            SwingUtilities.invokeLater(() -> answer.sofar(number, all));
        };
        work.execute(() -> {
            try {
                count.is(0, 1);
                doing.done(count);
            } catch (CancellationException e) {
                LOG.log(System.Logger.Level.DEBUG, "stopped");
            } catch (NothingOnPaper | ShowFileException e) {
                say(answer, sentence(String.valueOf(e.getMessage())));
            } catch (IOException | PrinterException | RuntimeException e) {
                LOG.log(System.Logger.Level.WARNING, failed, e);
                say(answer, failed);
            }
        });
    }

    private static void say(Answer answer, String sentence) {
        SwingUtilities.invokeLater(() -> answer.said(sentence));
    }

    private static String sentence(String message) {
        return Character.toUpperCase(message.charAt(0)) + message.substring(1) + ".";
    }

    @Override
    public void make(Show show, Asked asked, Answer answer) {
        Wanted.Flown what = flown.get();
        begin(answer, "These pages could not be made; the log says why.", count -> {
            LoadedShow loaded = loaded(show);
            Act only = asked.actId() == null ? null : show.act(asked.actId()).orElse(null);
            List<Act> acts = only == null ? show.acts() : List.of(only);
            Wanted wanted = new Wanted(
                    loaded, acts, act -> variant(act, asked), only != null, asked.large(), what, measures.get());
            Pages pages = Paper.of(asked.kind(), wanted, count);
            SwingUtilities.invokeLater(() -> answer.made(pages));
        });
    }

    private static Variant variant(Act act, Asked asked) {
        String name = asked.variant();
        Variant first = act.variants().get(0);
        return name == null ? first : act.variant(name).orElse(first);
    }

    /** The show as it is edited, predicted; what was predicted before is used again. */
    private LoadedShow loaded(Show show) {
        RunningShow live = running.get();
        LoadedShow now = live == null ? null : live.loaded();
        LoadedShow before = made;
        if (now != null && now.show().equals(show)) {
            made = now;
            return now;
        }
        if (before != null && before.show().equals(show) && before.paces().equals(paces.get())) {
            return before;
        }
        LoadedShow loaded = new LoadedShow(show, catalogue.get(), paces.get(), flights, LoadedShow.FLIGHTS);
        if (now != null) {
            loaded.learn(now.passes());
        }
        made = loaded;
        return loaded;
    }

    @Override
    public void save(Pages pages, Path file, Answer answer) {
        begin(answer, "The PDF could not be written; the log says why.", count -> {
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            PagePdf.write(pages, pdf, count);
            new AtomicFile().write(file, pdf.toByteArray());
            say(answer, "Saved as " + file.getFileName() + ".");
        });
    }

    @Override
    public void print(Pages pages, Answer answer) {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName(pages.title());
        if (job.getPrintService() == null) {
            answer.said("There is no printer here; Ctrl+S saves a PDF instead.");
            return;
        }
        // Asked for in the toolkit's own dialog, which the incident page can close; the system's would stay in front.
        PrintRequestAttributeSet chosen = new HashPrintRequestAttributeSet();
        if (!job.printDialog(chosen)) {
            answer.said("Nothing was printed.");
            return;
        }
        begin(answer, "The printer refused the pages; Ctrl+S saves a PDF instead.", count -> {
            job.setPageable(new PagePrint(pages, count));
            job.print(chosen);
            say(answer, "Sent to the printer.");
        });
    }

    @Override
    public void stop() {
        wish.incrementAndGet();
    }
}
