package plumbleaf.jobfile.job;

/** A job file that says everything a job file can say, at least once. */
final class FullJob {
    static final String TEXT = """
        {
          "format": "plumbleaf-job", "version": 1, "title": "All there is", "date": "2027-08-02", "display": "metric", "styleFile": "our-styles.json", "draft": true,
          "site": {
            "customer": "Ilse Tarbat", "phone": "(555) 010-0177", "address": "2 Quarry Row, Upper Quill", "basis": "engineered", "uses": ["public-way", "walk"],
            "wind": { "speed": "51 m/s", "exposure": "D", "edition": "7-22", "risk": "II", "topographic": 1.2, "elevation": 0.95 },
            "frost": { "depth": "800 mm", "source": "town hall", "from": "nov", "through": "mar" },
            "access": { "passage": "30\\"", "machine": "34\\"", "carry": "120'", "parking": "on the verge",
              "dogs": "one, shut in the barn", "services": "tap at the barn, no power" }, "start": "2027-08-02",
            "soil": {
              "kind": "silt", "state": "soft", "belowWater": true, "class": 5, "nh": "6.6 MN/m3", "looseTop": "300 mm", "slope": "1 in 12",
              "su": "900 psf", "lateralPerFoot": "120 psf", "besideDrop": "18\\"", "rockAt": "4'",
              "pulls": [
                {
                  "force": "60 lb", "at": "54\\"", "low": "3\\"", "movedLow": "1/16\\"", "high": "60\\"", "movedHigh": "3/8\\"", "leftOver": "0\\"",
                  "post": "F1083-REG-2", "depth": "36\\""
                }
              ]
            }
          },
          "ground": {
            "benchmark": { "mark": "bolt", "elevation": "-1.25 m" },
            "setups": [{ "id": "H1", "on": "benchmark", "backsight": "1.5 m" }, { "id": "H2", "on": "S2", "backsight": "1/64\\"" }],
            "shots": [
              { "id": "S1", "run": "R1", "station": "0'", "setup": "H1", "rod": "1.6 m", "note": "start" },
              { "id": "S2", "run": "R1", "after": "S1", "over": "7'", "rises": "3\\"", "out": "1'" },
              { "id": "S3", "run": "R1", "station": "9'", "from": "S1", "falls": "2\\"", "in": "5 mm" },
              { "id": "S4", "east": "3'", "north": "-2'", "elevation": "7.3 mm" },
              { "id": "S5", "run": "R2", "station": "1'", "setup": "H2", "rod": "0\\"" },
              { "id": "S6", "tapes": { "from": "S4", "length": "7'", "and": "S5", "andLength": "9'", "side": "right",
                "check": "S1", "checkLength": "5'" }, "elevation": "1\\"" }
            ],
            "breaklines": [{ "what": "curb", "shots": ["S1", "S2"] }],
            "later": [{ "run": "R1", "from": "0'", "to": "4'", "rise": "60 mm", "why": "pavers" }]
          },
          "runs": [
            {
              "id": "R1", "outside": "left", "start": { "east": "1.0005 m", "north": "-2'" },
              "legs": [
                { "length": "30'", "bearing": "12.5 deg", "taped": "slope" },
                { "length": "20'", "turn": "33.3 deg right", "taped": "level" },
                { "length": "10'", "diagonal": "25' 3\\" left", "taped": "level" },
                { "along": "-1'", "off": "6' right" },
                { "turn": "0 deg", "arc": { "radius": "20'", "turn": "90 deg left", "sagitta": "3\\"" } }
              ],
              "sides": [{ "from": "0'", "to": "30'", "basis": "customary", "post": "F1083-REG-2.5", "maxBay": "6'" }],
              "checks": [{ "from": "0'", "to": "50'", "taped": "47' 11\\"" }],
              "ends": [{ "kind": "wall", "of": "block" }, { "kind": "joins", "run": "R2" }],
              "style": "wood-spaced-picket", "infill": "1.2 m", "bottomGap": "50 mm", "fit": "level-top", "step": "8\\"", "maxBay": "6'",
              "finishedFace": "both", "stain": { "coats": 2, "texture": "smooth" }, "crossSlope": "-3%", "fits": [{ "from": "2'", "to": "12'", "fit": "stepped" }], "noDig": [{ "from": "1'", "to": "2'", "why": "pipe", "ticket": "A-1" }],
              "set": [{ "id": "P1", "station": "6'" }], "posts": { "support": { "kind": "driven", "depth": "3'" } },
              "otherPosts": [{ "from": "8'", "to": "16'", "support": { "kind": "core-socket", "depth": "8\\"", "slabThickness": "10\\"", "edgeDistance": "6\\"" } }],
              "basis": "customary"
            },
            {
              "id": "R2", "outside": "right", "start": { "east": "0'", "north": "0'" },
              "legs": [{ "length": "60'", "bearing": "0 deg", "taped": "level" }], "ends": ["free", { "kind": "neighbour", "fence": "boards next door", "height": "6'", "agreed": "yes" }], "style": "none",
              "infill": "6'", "bottomGap": "0\\"", "fit": "stepped", "maxBay": "8'", "finishedFace": "in",
              "posts": { "support": { "kind": "core-socket", "depth": "8\\"", "slabThickness": "10\\"", "edgeDistance": "6\\"" } }
            },
            { "id": "R3", "start": { "run": "R2", "station": "3'", "out": "1'" }, "style": "none" }
          ],
          "gates": [
            {
              "id": "G1", "kind": "swing", "run": "R2", "station": "4'", "opening": "4'", "hinge": "right", "swing": "out",
              "opens": "180 deg", "holdOpen": { "kind": "stop", "radius": "40\\"" },
              "leaf": {
                "shape": { "kind": "sloped", "top": "2.5%", "bottom": "-7.25%" }, "infill": "5'", "bottomGap": "2\\"", "hingeGap": "1\\"",
                "latchGap": "1/2\\"", "infillBelowFrame": "1\\"", "infillAboveFrame": "1/2\\"", "midRails": 2,
                "midRailsAt": ["18\\"", "34\\""], "top": { "kind": "scalloped", "dip": "3\\"" },
                "fill": { "kind": "style", "style": "wood-spaced-picket" }
              },
              "hingePost": {
                "support": {
                  "kind": "existing", "feel": "firm",
                  "tests": [
                    {
                      "force": "75 lb", "at": "54\\"", "low": "3\\"", "movedLow": "1/64\\"", "high": "60\\"", "movedHigh": "1/4\\"",
                      "leftOver": "1/32\\""
                    }
                  ]
                }
              },
              "latchPost": { "support": { "kind": "wall-anchor", "of": "stud" } },
              "hinges": { "model": "HINGE-BALL-0.75", "fromTop": "8\\"", "fromBottom": "7\\"", "count": 3, "weightOn": 2, "closer": true },
              "latch": { "model": "LATCH-GRAVITY", "height": "40\\"" },
              "loads": {
                "person": "890 N", "serviceGust": "35 mph", "slamSpeed": "0.9 m/s", "laterRise": "1\\"", "shotError": "3 mm", "ice": "1/2\\""
              },
              "asSet": [
                {
                  "date": "2027-08-20", "top": "4'", "middle": "48-1/16\\"", "bottom": "4'", "hingePlumb": { "along": "1/8\\"", "across": "-1/16\\"" },
                  "latchPlumb": { "along": "0\\"", "across": "1 mm" }
                }
              ],
              "release": { "kind": "released", "revision": "B", "date": "2027-08-21", "by": "I. Tarbat", "beforePosts": true },
              "regrade": true, "landing": true, "setBack": "18\\"", "obstacles": [{ "what": "meter box", "along": "-10\\"", "side": "20\\"" }]
            },
            {
              "id": "G2", "kind": "pair", "run": "R2", "station": "10'", "opening": "12'", "split": "37.5%", "active": "left", "swing": "in",
              "meeting": { "strip": "1-1/2\\"", "rod": "ROD-0.75", "rods": 2, "sleeveAbove": "1/2\\"", "sleeveHole": "10\\"", "sleeveDepth": "2'", "stop": "5\\"", "topKeeper": true },
              "opens": "90 deg", "holdOpen": { "kind": "hinge-lock", "lever": "2\\"" }, "release": "hold",
              "leaf": {
                "top": { "kind": "arched", "rise": "5\\"" },
                "fill": { "kind": "metal-pickets", "section": "PICKET-0.75x0.75x0.065", "gap": "3-7/8\\"", "punched": true }
              },
              "hingePost": { "support": { "kind": "new-footing", "bell": { "diameter": "18\\"", "height": "8\\"" }, "sleeve": true } },
              "latchPost": {
                "support": {
                  "kind": "slab-plate", "slabThickness": "6\\"", "edgeDistance": "5\\"", "slabLength": "12'", "slabWidth": "4'",
                  "concrete": "3000 psi", "anchorPull": "900 lb", "anchorPush": "1200 lb"
                }
              }
            },
            { "id": "G3", "kind": "slide", "run": "R2", "station": "24'", "opening": "16'", "slides": "right",
               "slide": {
                 "tail": "9'", "spacing": "7'", "overlap": "5\\"", "beside": "out", "rollers": "ROLLER-CAGE-3", "uprights": "4'",
                 "mouthUp": "3/4\\"", "mouthAcross": "1-1/2\\"", "powered": true, "rearPost": { "support": { "kind": "driven", "depth": "4'" } }
               },
              "leaf": { "fill": { "kind": "mesh", "woven": true, "wire": "0.148\\"", "pitch": "2\\"", "edge": "flat-bar" } } },
            { "id": "G4", "kind": "flagged", "run": "R2", "station": "44'", "opening": "10'", "name": "bifold",
              "leaf": { "fill": { "kind": "sheet", "thickness": "0.0747\\"", "edge": "angle" } } },
            { "id": "G5", "kind": "swing", "run": "R1" }
          ],
          "builds": {
            "R1": { "post": "F1083-REG-2", "hole": "9\\"", "depth": "30\\"" },
            "G1": {
              "frame": "TUBE-2x2x0.12", "braces": 2, "joint": "butted", "hingePost": "F1083-REG-2.5", "latchPost": "F1083-REG-2",
              "hole": "14\\"", "depth": "48\\"", "latchHole": "10\\"", "latchDepth": "3'", "flat": true,
              "bracket": { "play": "0.5 deg", "momentPerDegree": "60 lb-ft", "capacity": "2400 lb-in" }
            },
            "G2": { "braces": { "kind": "rod", "diameter": "5/16\\"", "pretension": "150 lb", "runs": "both" },
              "rightLeaf": { "frame": "TUBE-1.5x1.5x0.083", "flat": true, "braces": { "kind": "rod", "diameter": "1/4\\"", "pretension": "120 lb", "runs": "both" },
                "joint": "butted", "hinge": "HINGE-ADJ-0.75",
                "fill": { "kind": "metal-pickets", "section": "PICKET-0.75x0.75x0.065", "gap": "3\\"", "punched": true } } }
          },
          "existing": {
            "lines": [{ "kind": "gas to the grill", "run": "R1", "station": "12'", "width": "1\\"", "tolerance": "18\\"" }],
            "plugs": [{ "run": "R1", "station": "20'", "diameter": "10\\"", "depth": "30\\"", "fate": "pull" }],
            "fences": [{ "kind": "chain link", "length": "50'", "pitch": "10'", "concrete": true, "perFoot": "9 lb", "plugDiameter": "12\\"", "plugDepth": "2'", "plugs": "leave", "run": "R1", "from": "3'", "treated": true }],
            "tickets": [{ "number": "A-1", "digFrom": "2027-08-05", "validThrough": "2027-08-25" }]
          },
          "rules": {
            "height": { "limit": "6'", "from": "outside" }, "otherHeights": [{ "limit": "7'", "from": "inside" }],
            "gap": { "largest": "2\\"", "why": "terrier" },
            "pool": { "runs": ["R1"], "side": "out", "height": "60\\"", "lookedOutside": true,
              "hardGround": [{ "run": "R1", "from": "1'", "to": "3'" }],
              "climbables": [{ "what": "heat pump", "run": "R1", "station": "2'", "away": "20\\"" }],
              "gates": [{ "gate": "G1", "releaseHeight": "54\\"", "releaseOnPoolSide": "yes", "shielded": true, "lockable": "yes", "closer": "no",
                "inactiveFixed": "no" }] },
            "sights": [{ "what": "corner of Elm and Fourth", "east": "10'", "north": "-4'", "first": "90 deg", "firstLeg": "25'", "second": "180 deg",
              "secondLeg": "20'", "height": "30\\"" }],
            "accessible": [{ "gate": "G1", "smoothBottom": "no", "threshold": "1/2\\"" }],
            "nearHouse": { "strip": "4'", "required": true, "buildings": [{ "what": "house", "corners": [{ "east": "1'", "north": "2'" },
              { "east": "3'", "north": "4'" }] }] },
            "propertyLines": [{ "what": "east lot line", "certifiedBy": "pins", "setback": "6\\"", "points": [{ "east": "1'", "north": "2'" },
              { "east": "3'", "north": "4'" }] }],
            "keeps": [{ "what": "small-dog", "runs": ["R1"], "largest": "1-1/2\\"" }], "guards": [{ "run": "R1", "from": "1'", "to": "5'", "drop": "40\\"", "dwelling": "yes" }],
            "overnight": [{ "what": "a dog", "temporaryFence": "40'" }]
          },
          "money": {
            "priceBook": "example-2027", "overhead": "12.5%", "margin": "17.3%", "contingency": "1.1%", "reserve": "1%",
            "taxes": [{ "name": "state", "rate": "6.25%" }, { "name": "town", "rate": "1%", "on": ["labor", "material"] }], "wage": "$71.50",
            "options": [{ "id": "better", "name": "heavier posts", "kind": "build", "edits": ["builds.G1.hingePost=F1083-REG-3"] },
              { "id": "lock", "name": "a lock", "edits": ["gates[G1].latch="] }],
            "allowances": [{ "charge": "rock-hole", "count": 2, "why": "ledge next door" }], "exclusions": ["Painting."],
            "billing": { "retainage": "10%", "bills": [{ "date": "2027-08-01", "what": "on signing", "amount": "$500.00" }],
              "paid": [{ "date": "2027-08-09", "how": "check", "amount": "$450.00" }],
              "notices": [{ "what": "preliminary notice", "days": 20, "from": "first-work", "sent": "2027-08-10" }],
              "measured": [{ "what": "posts", "unit": "each", "quantity": 40, "each": "$85.00", "installed": 20, "stored": 10 }],
              "submittals": [{ "what": "galvanizing certificate", "sent": "2027-08-02", "back": "2027-08-09" }] },
            "kept": [{ "of": "crew", "price": "66.5" }],
            "validUntil": "2027-09-01", "stages": [{ "when": "on signing", "share": "33.3%" }, { "when": "when done", "share": "66.7%" }]
          },
          "actuals": [{ "date": "2027-08-02", "task": "dig", "soil": "clay", "quantity": 12.5, "hours": 3.25, "note": "clay" }],
          "used": [{ "date": "2027-08-02", "item": "concrete", "units": 40, "returned": 3 }],
          "changes": [{ "id": "C1", "date": "2027-08-10", "what": "gate wider", "price": "-$1,240.50", "days": 0.5, "accepted": true }],
          "warranty": [{ "date": "2028-03-01", "what": "latch misses", "cause": "soil", "hours": 1.5, "cost": "$12.00" }],
          "moisture": [{ "date": "2027-09-20", "where": "north side", "moisture": "14%" }],
          "parts": [
            { "file": "ironmonger.csv", "rows": [
              "id,name,pin_offset_in,pin_swing_side_in,capacity_pair_lb,source",
              "OWN-HINGE,our own hinge,0.5,1.25,350,sheet of the ironmonger 2026" ] }
          ],
          "notes": ["One.", "Two with \\"quotes\\" and \\u2028."],
          "packet": ["proposal", "site-plan", "gate"]
        }
        """;

    private FullJob() {}
}
