package crowdline.console.prepare.glance;

import crowdline.console.paint.Mark;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.prepare.glance.PrepareView.PinView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.measure.Measures;
import crowdline.measure.Measures.Dimension;

/** The show at a glance, which speaks in knots and feet, in the units it is read in. */
public final class ReadIn {
    private final Measures measures;

    private ReadIn(Measures measures) {
        this.measures = measures;
    }

    public static PrepareView units(PrepareView view, Measures measures) {
        return measures.equals(Measures.USUAL) ? view : new ReadIn(measures).of(view);
    }

    private PrepareView of(PrepareView view) {
        return new PrepareView(
                view.title(),
                view.where(),
                measures.told(view.air()),
                view.acts().stream().map(this::of).toList(),
                view.findings().stream()
                        .map(f -> new FindingView(f.mark(), measures.told(f.message()), f.where()))
                        .toList());
    }

    private ActView of(ActView act) {
        return new ActView(
                act.id(),
                act.title(),
                act.performer(),
                act.airframe(),
                act.slot(),
                act.variants().stream().map(this::of).toList(),
                act.inLive());
    }

    private VariantView of(VariantView variant) {
        return new VariantView(
                variant.name(),
                variant.minCloudBaseFt(),
                measures.told(variant.base()),
                variant.total(),
                variant.figures().stream().map(this::of).toList(),
                variant.path(),
                variant.passes());
    }

    private FigureView of(FigureView figure) {
        return new FigureView(
                of(figure.edit()),
                figure.curves(),
                figure.sketch(),
                figure.name(),
                figure.look(),
                figure.start(),
                figure.duration(),
                figure.band(),
                measures.numbers(figure.entry(), Dimension.SPEED),
                measures.numbers(figure.height(), Dimension.HEIGHT),
                figure.load(),
                figure.remarks());
    }

    private FigureEdit of(FigureEdit edit) {
        return new FigureEdit(
                edit.id(),
                edit.isTransit(),
                edit.pins().stream()
                        .map(p -> new PinView(
                                p.field(),
                                measures.shown(p.told(), p.field().dimension()),
                                measures.shown(p.value(), p.field().dimension()),
                                new Mark(
                                        p.mark().form(),
                                        p.mark().tone(),
                                        measures.told(p.mark().word()))))
                        .toList(),
                edit.place(),
                edit.shape(),
                edit.written());
    }
}
