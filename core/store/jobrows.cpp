#include "core/store/jobrows.h"

#include "core/job/standing.h"
#include "core/job/waits.h"
#include "core/store/searchrows.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <unordered_map>

namespace undercowl::store {
namespace {

template<typename... Cells>
Row row(const Cells&... cells) {
    Row made;
    made.reserve(sizeof...(cells));
    (made.push_back(cells), ...);
    return made;
}

Cell text(std::string_view value) {
    return std::string(value);
}
Cell whole(auto value) {
    return static_cast<std::int64_t>(value);
}
Cell real(const std::optional<double>& value) {
    return value ? Cell{*value} : Cell{};
}
Cell digits(const std::optional<job::TypedValue>& value) {
    return value ? Cell{value->digits} : Cell{};
}
Cell unit(const std::optional<job::TypedValue>& value) {
    return value ? Cell{value->unit} : Cell{};
}

Cell list(const std::vector<std::string>& values) {
    return nlohmann::json(values).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

void putLine(const JobState& state, RowSink& sink) {
    const job::Job& job = state.job;
    const job::Standing standing = job::standing(job);
    const job::Waiting waits = job::waitingFor(job);
    const bool waiting =
        std::any_of(job.tasks.begin(), job.tasks.end(), [](const auto& t) { return t.waiting; });
    const auto unsafe =
        std::count_if(job.findings.begin(), job.findings.end(), [](const job::Finding& finding) {
            return finding.severity == job::Severity::Unsafe && !finding.settled;
        });
    sink.put(TableId::JobLine,
             row(job.id, job.number, job.machine, state.around.machine, state.around.frameNumber, job.owner,
                 state.around.owner, job.reason, text(code(standing.moment)), text(standing.stopped.key),
                 list(standing.stopped.values), text(standing.next.key), list(standing.next.values),
                 whole(waiting), whole(unsafe), whole(standing.lastAt), text(code(waits.what)),
                 text(waits.why.key), list(waits.why.values)));
}

// Key cells of an item after the stream, and the rows that it has.
Row keyOf(const auto& item) {
    return {item.id};
}
Row keyOf(const job::WireCheck& check) {
    return {check.gathering, text(code(check.place.half)), whole(check.place.number),
            whole(check.place.slot)};
}

Row under(const Id& stream, Row rest) {
    rest.insert(rest.begin(), stream);
    return rest;
}

void putRows(const Id& s, const job::Photo& p, RowSink& sink) {
    sink.put(TableId::Photo,
             row(s, p.id, p.media, text(code(p.purpose)), p.about, p.note, whole(p.width), whole(p.height),
                 whole(p.takenAt), p.said.entry, p.said.mechanic, whole(p.said.at)));
}

void putRows(const Id& s, const job::Finding& f, RowSink& sink) {
    sink.put(TableId::Finding, row(s, f.id, f.text, text(code(f.severity)), f.toDo, whole(f.settled),
                                   f.settledHow, f.said.entry, f.said.mechanic, whole(f.said.at)));
}

void putRows(const Id& s, const job::Task& t, RowSink& sink) {
    sink.put(TableId::Task, row(s, t.id, t.title, whole(t.waiting), t.waitingFor, whole(t.order)));
}

void putRows(const Id& s, const job::StripStep& t, RowSink& sink) {
    const auto& done = t.refitted;
    sink.put(TableId::Step,
             row(s, t.id, t.task, t.title, t.bag, t.note, list(t.cautions), whole(t.order), t.said.entry,
                 t.said.mechanic, whole(t.said.at), done ? Cell{done->said.entry} : Cell{},
                 done ? Cell{done->said.mechanic} : Cell{}, done ? whole(done->said.at) : Cell{},
                 done ? Cell{done->note} : Cell{}));
    sink.drop(TableId::Hardware, {s, t.id});
    int place = 0;
    for (const job::Hardware& h : t.hardware) {
        sink.put(TableId::Hardware, row(s, t.id, whole(++place), whole(h.count), h.what, h.thread, h.length,
                                        digits(h.torque), unit(h.torque)));
    }
}

Row placeRow(const Id& s, const Id& gathering, const wiring::PlaceKey& key) {
    return row(s, gathering, text(code(key.half)), whole(key.number), whole(key.slot));
}

void putPlace(const Id& s, const Id& gathering, const wiring::Place& place, RowSink& sink) {
    const Row key = placeRow(s, gathering, place.key);
    for (const auto which :
         {wiring::Answer::AsFound, wiring::Answer::AsItShouldBe, wiring::Answer::AsRefitted}) {
        const auto& answer = place.answer(which);
        if (!answer) {
            continue;
        }
        const wiring::Wire& wire = answer->wire;
        const auto& mark = answer->mark;
        Row full = key;
        for (Cell& cell :
             row(text(code(which)), text(code(wire.colour.base)),
                 wire.colour.tracer ? text(code(*wire.colour.tracer)) : Cell{}, wiring::text(wire.terminal),
                 real(wire.sizeMm2), wire.function, wire.din, text(code(answer->how)), answer->probability,
                 answer->source, mark ? Cell{mark->photo} : Cell{}, mark ? Cell{mark->x} : Cell{},
                 mark ? Cell{mark->y} : Cell{}, answer->entry)) {
            full.push_back(std::move(cell));
        }
        sink.put(TableId::PlaceAnswer, std::move(full));
    }
    if (!place.tag.empty()) {
        Row full = key;
        full.emplace_back(place.tag);
        sink.put(TableId::PlaceTag, std::move(full));
    }
}

void dropPlace(const Id& s, const Id& gathering, const wiring::PlaceKey& key, RowSink& sink) {
    sink.drop(TableId::PlaceAnswer, placeRow(s, gathering, key));
    sink.drop(TableId::PlaceTag, placeRow(s, gathering, key));
}

void putRows(const Id& s, const wiring::Gathering& g, RowSink& sink) {
    sink.put(TableId::Gathering,
             row(s, g.id, g.title, text(code(g.kind)), whole(g.places), whole(g.rows), text(code(g.seenFrom)),
                 g.latch, g.first ? Cell{g.first->photo} : Cell{}, g.first ? Cell{g.first->x} : Cell{},
                 g.first ? Cell{g.first->y} : Cell{}, g.photo, g.step));
}

void putRows(const Id& s, const job::WireCheck& c, RowSink& sink) {
    Row full = placeRow(s, c.gathering, c.place);
    for (Cell& cell : row(text(code(c.outcome)), text(code(c.against)), c.note, c.said.entry, c.said.mechanic,
                          whole(c.said.at))) {
        full.push_back(std::move(cell));
    }
    sink.put(TableId::WireCheck, std::move(full));
}

void putRows(const Id& s, const job::Part& p, RowSink& sink) {
    sink.put(TableId::Part, row(s, p.id, p.name, p.number, text(code(p.state)), p.note, p.about, p.said.entry,
                                p.said.mechanic, whole(p.said.at)));
}

void putRows(const Id& s, const job::Reading& r, RowSink& sink) {
    sink.put(TableId::Reading,
             row(s, r.id, r.about, r.what, r.value.digits, r.value.unit, r.instrument, r.uncertainty,
                 digits(r.low), unit(r.low), digits(r.high), unit(r.high), r.limitSource, r.verdict,
                 real(r.probability), r.said.entry, r.said.mechanic, whole(r.said.at), list(r.repeated)));
}

void putRows(const Id& s, const job::Memo& m, RowSink& sink) {
    sink.put(TableId::Memo,
             row(s, m.id, m.media, m.text, m.about, m.said.entry, m.said.mechanic, whole(m.said.at)));
}

void putRows(const Id& s, const job::Recheck& r, RowSink& sink) {
    sink.put(TableId::Recheck,
             row(s, r.id, r.what, digits(r.after), unit(r.after), r.afterDays ? whole(*r.afterDays) : Cell{},
                 r.said.entry, r.said.mechanic, whole(r.said.at)));
}

void dropRows(TableId table, const Row& key, RowSink& sink) {
    sink.drop(table, key);
    if (table == TableId::Step) {
        sink.drop(TableId::Hardware, key);
    } else if (table == TableId::Gathering) {
        sink.drop(TableId::PlaceAnswer, key);
        sink.drop(TableId::PlaceTag, key);
    }
}

template<typename Item>
const Item* counterpart(const std::vector<Item>& in, const Row& key, std::size_t near) {
    if (near < in.size() && keyOf(in[near]) == key) { // the usual case: the lists grow at their end
        return &in[near];
    }
    const auto found =
        std::find_if(in.begin(), in.end(), [&key](const Item& item) { return keyOf(item) == key; });
    return found == in.end() ? nullptr : &*found;
}

void putPlaceChanges(const Id& stream, const wiring::Gathering* before, const wiring::Gathering& after,
                     RowSink& sink) {
    for (const wiring::Place& place : after.held) {
        const wiring::Place* old = before != nullptr ? before->find(place.key) : nullptr;
        if (old != nullptr && *old == place) {
            continue;
        }
        if (old != nullptr) {
            dropPlace(stream, after.id, place.key, sink);
        }
        putPlace(stream, after.id, place, sink);
    }
    if (before != nullptr) {
        for (const wiring::Place& place : before->held) {
            if (after.find(place.key) == nullptr) {
                dropPlace(stream, after.id, place.key, sink);
            }
        }
    }
}

template<typename Item>
void putListChanges(const Id& stream, TableId table, const std::vector<Item>& before,
                    const std::vector<Item>& after, RowSink& sink) {
    for (std::size_t i = 0; i < after.size(); ++i) {
        const Item* old = counterpart(before, keyOf(after[i]), i);
        if (old != nullptr && *old == after[i]) {
            continue;
        }
        putRows(stream, after[i], sink);
        if constexpr (std::is_same_v<Item, wiring::Gathering>) {
            putPlaceChanges(stream, old, after[i], sink);
        }
    }
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (counterpart(after, keyOf(before[i]), i) == nullptr) {
            dropRows(table, under(stream, keyOf(before[i])), sink);
        }
    }
}

} // namespace

std::string label(const job::Machine& machine) {
    std::string text = machine.make;
    if (!machine.model.empty()) {
        text += text.empty() ? machine.model : " " + machine.model;
    }
    if (machine.year) {
        text += (text.empty() ? "" : ", ") + std::to_string(*machine.year);
    }
    return text;
}

void putMachine(const job::Machine& m, RowSink& sink) {
    sink.put(TableId::Machine,
             row(m.id, m.make, m.model, m.year ? whole(*m.year) : Cell{}, m.frameNumber, m.notes));
}

void putOwner(const job::Owner& o, RowSink& sink) {
    sink.put(TableId::Owner, row(o.id, o.name, o.phone, o.mail, o.address));
}

void putChanges(const JobState& before, const JobState& after, RowSink& sink) {
    const JobState nothing;
    const bool was = !before.job.opened.entry.empty();
    const bool is = !after.job.opened.entry.empty();
    if (!was && !is) {
        return;
    }
    const JobState& b = was ? before : nothing;
    const JobState& a = is ? after : nothing;
    const Id& stream = is ? after.job.id : before.job.id;
    putListChanges(stream, TableId::Photo, b.job.photos, a.job.photos, sink);
    putListChanges(stream, TableId::Finding, b.job.findings, a.job.findings, sink);
    putListChanges(stream, TableId::Task, b.job.tasks, a.job.tasks, sink);
    putListChanges(stream, TableId::Step, b.job.steps, a.job.steps, sink);
    putListChanges(stream, TableId::Gathering, b.job.gatherings, a.job.gatherings, sink);
    putListChanges(stream, TableId::WireCheck, b.job.wireChecks, a.job.wireChecks, sink);
    putListChanges(stream, TableId::Part, b.job.parts, a.job.parts, sink);
    putListChanges(stream, TableId::Reading, b.job.readings, a.job.readings, sink);
    putListChanges(stream, TableId::Memo, b.job.memos, a.job.memos, sink);
    putListChanges(stream, TableId::Recheck, b.job.rechecks, a.job.rechecks, sink);
    if (is) {
        putLine(after, sink);
    } else {
        sink.drop(TableId::JobLine, {stream});
    }
    putSearchChanges(stream, b, a, sink);
}

} // namespace undercowl::store
