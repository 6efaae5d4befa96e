// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import org.earleaf.app.store.Names.Kind;
import org.earleaf.field.FieldPart;
import org.earleaf.label.LabelEntry;
import org.earleaf.load.LoadLine;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.LabelWork;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.AnnotatedMember;
import tools.jackson.databind.introspect.JacksonAnnotationIntrospector;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.NameTransformer;

/**
 * Loads and label entries as text: the parts of the records and nothing that follows from them. What a record groups is
 * kept as if it stood in the record itself: how facts are grouped may change, what a farm has kept may not.
 */
final class LoadJson {
    private static final Set<Class<?>> GROUPS = Set.of(
            LabelEntry.Title.class,
            LabelEntry.InTank.class,
            TankLoad.Ticket.class,
            TankLoad.Fill.class,
            LabelWork.Driving.class,
            LoadLine.Goods.class,
            FieldPart.class,
            LabelWork.Ground.class,
            LabelWork.Standing.class);

    private static final JsonMapper JSON = JsonMapper.builder()
            .annotationIntrospector(new JacksonAnnotationIntrospector() {
                @Override
                public @Nullable NameTransformer findUnwrappingNameTransformer(
                        MapperConfig<?> config, AnnotatedMember part) {
                    return GROUPS.contains(part.getRawType())
                            ? NameTransformer.NOP
                            : super.findUnwrappingNameTransformer(config, part);
                }
            })
            .addModule(SaidJson.module())
            .changeDefaultVisibility(v -> v.withIsGetterVisibility(Visibility.NONE))
            .build();

    private LoadJson() {}

    static String text(Object fact) {
        return JSON.writeValueAsString(fact);
    }

    /** As it is kept, with ids in place of names. */
    static String text(TankLoad load, Names names) {
        return names.arePlain() ? text(load) : text(called(load, names::id));
    }

    static String text(LabelEntry entry, Names names) {
        return names.arePlain() ? text(entry) : text(called(entry, names::id));
    }

    static TankLoad load(String body, Names names) {
        ObjectNode load = (ObjectNode) JSON.readTree(body);
        // Loads of before heel and overrides were kept.
        if (!load.has("unapplied_m3")) {
            load.put("unapplied_m3", 0.0).putArray("overridden");
        }
        TankLoad kept = JSON.treeToValue(load, TankLoad.class);
        return names.arePlain() ? kept : called(kept, names::name);
    }

    static LabelEntry label(String body, Names names) {
        LabelEntry kept = JSON.readValue(body, LabelEntry.class);
        return names.arePlain() ? kept : called(kept, names::name);
    }

    /** With today's names in place of earlier ones. */
    static LabelEntry today(LabelEntry entry, Names names) {
        return names.arePlain() ? entry : called(entry, names::today);
    }

    /** A load with its things called otherwise; what locked it before locks it still. */
    private static TankLoad called(TankLoad load, BiFunction<Kind, String, String> call) {
        ObjectNode tree = JSON.valueToTree(load);
        rename(tree, "rig", Kind.RIG, call);
        tree.get("grounds").forEach(g -> rename((ObjectNode) g, "field", Kind.FIELD, call));
        tree.get("lines").forEach(l -> rename((ObjectNode) l, "product", Kind.PRODUCT, call));
        TankLoad called = JSON.treeToValue(tree, TankLoad.class);
        return load.isLocked() ? JSON.treeToValue(tree.put("lock", called.fingerprint()), TankLoad.class) : called;
    }

    private static LabelEntry called(LabelEntry entry, BiFunction<Kind, String, String> call) {
        ObjectNode tree = JSON.valueToTree(entry);
        rename(tree, "product", Kind.PRODUCT, call);
        // Of products, active ingredients and classes only products may be called otherwise.
        for (String list : List.of("neverWith", "after")) {
            ArrayNode called = tree.arrayNode();
            tree.get(list).forEach(word -> called.add(call.apply(Kind.PRODUCT, word.asString())));
            tree.set(list, called);
        }
        return JSON.treeToValue(tree, LabelEntry.class);
    }

    private static void rename(ObjectNode of, String part, Kind kind, BiFunction<Kind, String, String> call) {
        of.put(part, call.apply(kind, of.get(part).asString()));
    }
}
