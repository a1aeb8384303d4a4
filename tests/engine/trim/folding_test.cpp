#include "engine/trim/folding.h"

#include <cmath>
#include <eigen3/Eigen/Dense>
#include <numbers>

#include "tests/engine/trim/sections.h"

using namespace hemline;
using Vector = Eigen::Vector3d;

namespace {

Vector vector_of(const Space& s) { return {s.x, s.y, s.z}; }

FlatPattern made(const Section& section, std::int64_t rise, const std::vector<EndStep>& left,
                 const std::vector<EndStep>& right = {}) {
    const auto pattern = flat_pattern(section, bends_at(section, rise), feet(3), left, right);
    REQUIRE_MESSAGE(pattern.ok(), section.trim);
    return *pattern;
}

std::vector<EndStep> plain_gable_tab() {
    return {{EndDeed::flange_cut, inches(1), {}},
            {EndDeed::drip_clip, inches(1), {}},
            {EndDeed::tab, inches(1), {}}};
}

const Face& face_named(const std::vector<Face>& faces, const FlatPattern& pattern, LegName name) {
    for (const Face& face : faces) {
        if (!face.is_tab && pattern.legs.names[face.leg] == name) {
            return face;
        }
    }
    FAIL("no such face");
    return faces.front();
}

/// The plane through a face's corners by least squares (Eigen), as a unit normal.
Vector plane_normal(const Face& face) {
    Eigen::MatrixXd points(3, static_cast<Eigen::Index>(face.corners.size()));
    for (std::size_t i = 0; i < face.corners.size(); ++i) {
        points.col(static_cast<Eigen::Index>(i)) = vector_of(face.corners[i]);
    }
    const Eigen::MatrixXd about = points.colwise() - points.rowwise().mean();
    const Eigen::JacobiSVD<Eigen::MatrixXd> svd(about, Eigen::ComputeFullU);
    CHECK(svd.singularValues()(2) < 1e-6);  // flat
    return svd.matrixU().col(2);
}

}  // namespace

TEST_CASE("the folded tab lies in the gable's plane and the face hangs plumb, 1:12 to 18:12") {
    const Section section = *sections_of_assets().find("eave_two_part");
    for (std::int64_t rise = 1; rise <= 18; ++rise) {
        const FlatPattern pattern = made(section, rise, plain_gable_tab(), plain_gable_tab());
        const auto faces =
            fold_up(pattern, step_of(FoldStep::finished), resting(pattern, rise_in_12(rise)));
        // The roof without the engine: level, turned around the eave by its slope.
        const Eigen::AngleAxisd roof(std::atan(static_cast<double>(rise) / 12), Vector::UnitX());
        const Vector up = roof * Vector::UnitZ();
        const Vector flange = plane_normal(face_named(faces, pattern, LegName::flange));
        CHECK(std::abs(flange.dot(up)) == doctest::Approx(1).epsilon(1e-9));
        const Vector face = plane_normal(face_named(faces, pattern, LegName::face));
        CHECK(std::abs(face.dot(Vector::UnitY())) == doctest::Approx(1).epsilon(1e-9));
        int tabs = 0;
        for (const Face& tab : faces) {
            if (!tab.is_tab) {
                continue;
            }
            ++tabs;
            CHECK(std::abs(plane_normal(tab).dot(Vector::UnitX())) ==
                  doctest::Approx(1).epsilon(1e-9));
            const double end = tab.side == Side::left ? 25.4 : 914.4 - 25.4;
            for (const Space& corner : tab.corners) {
                CHECK(corner.x == doctest::Approx(end).epsilon(1e-9));
                CHECK(corner.y > -1e-6);  // round the corner, toward the building
            }
        }
        CHECK(tabs == 2);
    }
}

TEST_CASE("a gable's return, folded along the plumb line, lies plumb across the eave") {
    const Section section = *sections_of_assets().find("gable");
    for (std::int64_t rise = 1; rise <= 18; ++rise) {
        const double slope = std::atan(static_cast<double>(rise) / 12);
        const FlatPattern plain = made(section, rise, {});
        const double face = static_cast<double>((plain.legs.edges[2] - plain.legs.edges[1]).nm());
        const Length plumb = Length::of_nm(std::llround(face * std::tan(slope)));
        const FlatPattern pattern = made(section, rise,
                                         {{EndDeed::flange_cut, inches(1) + plumb, {}},
                                          {EndDeed::drip_clip, inches(1), {}},
                                          {EndDeed::tab, inches(1), plumb}});
        const auto faces = fold_up(pattern, step_of(FoldStep::finished), {});
        REQUIRE(faces.back().is_tab);
        const Vector tab = plane_normal(faces.back());
        // The frame of the edge climbs with the gable: upright there, by Eigen.
        const Vector up = Eigen::AngleAxisd(slope, Vector::UnitY()) * Vector::UnitZ();
        CHECK(std::abs(tab.dot(up)) < 1e-6);
        CHECK(std::abs(tab.dot(Vector::UnitY())) < 1e-6);
    }
}

TEST_CASE("flange and face stand at the included angle of their edge's fold") {
    const Sections sections = sections_of_assets();
    int compared = 0;
    for (const Section& section : sections.all()) {
        for (std::int64_t rise = 1; rise <= 18; ++rise) {
            const FlatPattern pattern = made(section, rise, {});
            const std::size_t bend = pattern.main_bend;
            if (!section.legs[bend + 1].bend.fold_of) {
                continue;
            }
            FoldAsked roof;
            roof.kind = *section.legs[bend + 1].bend.fold_of;
            roof.pitch = rise_in_12(rise);
            roof.pitch2 = rise_in_12(section.trim == "transition" ? rise + 3 : rise);
            const auto faces = fold_up(pattern, step_of(FoldStep::as_cut), {});
            const Vector a = vector_of(faces[bend].normal);
            const Vector b = vector_of(faces[bend + 1].normal);
            const double between = std::acos(std::clamp(a.dot(b), -1.0, 1.0));
            CHECK(180 - between * 180 / std::numbers::pi ==
                  doctest::Approx(fold_of(roof).value().included_degrees).epsilon(1e-6));
            ++compared;
        }
    }
    CHECK(compared == 13 * 18);
}

TEST_CASE("folding stretches nothing and tears nothing, at any step") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const FlatPattern pattern = made(section, 6, plain_gable_tab(), plain_gable_tab());
    for (const double bends : {0.0, 0.3, 1.0}) {
        for (const double tabs : {0.0, 0.5, 1.0}) {
            const auto faces = fold_up(pattern, {bends, tabs}, {});
            REQUIRE(faces.size() == 6);
            for (std::size_t i = 0; i < faces.size(); ++i) {
                const FlatOutline& flat = i < 4 ? pattern.panels[i] : pattern.tabs[i - 4].outline;
                for (std::size_t c = 0; c < flat.size(); ++c) {
                    const FlatPoint& p = flat[c];
                    const FlatPoint& q = flat[(c + 1) % flat.size()];
                    const double laid =
                        std::hypot(static_cast<double>(p.x - q.x), static_cast<double>(p.y - q.y)) *
                        1e-6;
                    const double folded = (vector_of(faces[i].corners[c]) -
                                           vector_of(faces[i].corners[(c + 1) % flat.size()]))
                                              .norm();
                    CHECK(folded == doctest::Approx(laid).epsilon(1e-9));
                }
            }
            // Corners that coincide in the flat and are joined by a fold still coincide: tab and
            // face.
            const auto at = [&](std::size_t face, const FlatOutline& flat, const FlatPoint& p) {
                for (std::size_t c = 0; c < flat.size(); ++c) {
                    if (flat[c] == p) {
                        return vector_of(faces[face].corners[c]);
                    }
                }
                FAIL("no such corner");
                return Vector();
            };
            const FlatPoint hinge = pattern.tabs[0].fold.b;
            const Vector gap =
                at(4, pattern.tabs[0].outline, hinge) - at(1, pattern.panels[1], hinge);
            CHECK(gap.norm() < 1e-9);
        }
    }
}

TEST_CASE("flat, a pattern lies in one plane; half folded, its tabs stand at 45°") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const FlatPattern pattern = made(section, 6, plain_gable_tab());
    for (const Face& face : fold_up(pattern, step_of(FoldStep::flat), {})) {
        for (const Space& corner : face.corners) {
            CHECK(corner.z == doctest::Approx(0));
        }
    }
    const auto half = fold_up(pattern, step_of(FoldStep::tabs_half), {});
    const Vector tab = vector_of(half.back().normal);
    CHECK(tab.dot(vector_of(half[1].normal)) == doctest::Approx(std::cos(radians_of(45.0))));
}

TEST_CASE("open hems are drawn open, closed ones closed") {
    const Sections sections = sections_of_assets();
    const auto angle = [&](const char* trim, std::size_t leg) {
        const auto faces =
            fold_up(made(*sections.find(trim), 6, {}), step_of(FoldStep::as_cut), {});
        return vector_of(faces[leg].normal).dot(vector_of(faces[leg - 1].normal));
    };
    CHECK(angle("fascia_wrap", 2) == doctest::Approx(-1));
    CHECK(angle("eave_two_part", 3) > -0.99);
    CHECK(angle("eave_rolled", 3) > angle("eave_two_part", 3));
}
