import { useMemo, useState } from 'react';
import { formatLengthUnit, type LengthUnits, type Vec3 } from '../../../../../base/index.ts';
import { houseRules } from '../../../../../catalog/index.ts';
import { changeSurvey } from '../../../../../design/index.ts';
import { SCAN_UNITS, type ScanUnit, type Section } from '../../../../../envelope/index.ts';
import { type ScanInUnit, sayProblem, sayScanCheck } from '../../../../../says/index.ts';
import { Button, CheckField, ChoiceField, FileButton, SeverityMark } from '../../../parts/index.ts';
import { useBench } from '../../../state/bench.ts';
import { useEditor, useEditorParts } from '../../../state/use-editor.ts';
import { useUnits } from '../../../state/use-units.ts';
import sheet from '../../sheet.module.css';
import { useReadings } from '../use-readings.ts';
import { knownPlaces } from './known-places.ts';
import { ScanCompared } from './scan-compared.tsx';
import { ScanMarks } from './scan-marks.tsx';
import { ScanPicture } from './scan-picture.tsx';
import { chooseUnit, compareWithTape, loadScan, putScanAway, useScan } from './scan-store.ts';

const UNITS = Object.keys(SCAN_UNITS) as readonly ScanUnit[];
const UNIT_WORDS: Readonly<Record<ScanUnit, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  in: 'inches',
  ft: 'feet',
  m: 'metres',
};

/** How well a mark can be pressed on the picture; it only holds what the sections leave open. */
const PICKED_SIGMA_MM = 4;
/** Further from the tape than this, the scan has a hole (mm). */
const REACH_MM = 80;
/** A cargo space of no vehicle yet, to guess the unit by. */
const USUAL_LENGTH_MM = 2000;

const NO_SECTIONS: readonly Section[] = [];

/** What a person must know of the mesh, plainly: a room that is open at the rear is no fault. */
const Facts = ({ scan, units }: { readonly scan: ScanInUnit; readonly units: LengthUnits }) => {
  const notes = sayScanCheck(scan, units);
  return notes.length === 0 ? null : (
    <ul className={sheet.problems} aria-label="What the scan is like">
      {notes.map((note) => (
        <li key={note}>
          <SeverityMark severity="note" />
          <span>{note}</span>
        </li>
      ))}
    </ul>
  );
};

const LoadButton = ({ longestMm, again }: { readonly longestMm: number; readonly again: boolean }) => (
  <FileButton
    label="Scan file"
    accept=".glb,.ply,.stl,.obj"
    look={again ? 'plain' : 'main'}
    onFile={(file) => void loadScan(file, longestMm)}
  >
    {again ? 'Another scan…' : 'Load a scan…'}
  </FileButton>
);

/** The mesh with its unit, its marks and what came of them. */
interface LoadedPartProps {
  readonly sections: readonly Section[];
  readonly longestMm: number;
}

const LoadedPart = ({ sections, longestMm }: LoadedPartProps) => {
  const readings = useReadings();
  const { catalog } = useBench();
  const edit = useEditor((editor) => editor.edit);
  const { changes } = useEditorParts((editor) => ({ changes: editor.history.design.houseRules }));
  const { scan, name, unit, sought, compared } = useScan();
  const [otherSide, setOtherSide] = useState(false);
  const units = useUnits();
  const places = useMemo(() => knownPlaces(readings.read), [readings.read]);
  if (!scan) return null;
  const pairs = sought.flatMap(({ mark, at }) => {
    const place = places.find(({ key }) => key === mark);
    return place && at ? [{ scan: at, vehicle: place.at }] : [];
  });
  const size = scan.check.size.map((side) => formatLengthUnit(side * SCAN_UNITS[unit], units)).join(' × ');
  const align = async (): Promise<void> => {
    const { survey } = readings;
    const tapeSigma = Math.max(survey.sigmaMm, houseRules(catalog, changes).value('scan-sigma'));
    const options = { tapeSigma, markSigma: PICKED_SIGMA_MM, reach: REACH_MM };
    const made = await compareWithTape(pairs, sections, options);
    if (!made) return;
    const kept = { name, unitMm: SCAN_UNITS[unit], triangles: scan.check.triangles, rmsMm: made.rmsMm };
    edit('lay a scan beside the tape', (now) => changeSurvey(now, { scan: kept }));
  };
  return (
    <>
      <p>
        <strong>{name}</strong>: {scan.check.triangles.toLocaleString('en-US')} triangles, {size}
      </p>
      <Facts scan={{ check: scan.check, unitMm: SCAN_UNITS[unit], longestTapedMm: longestMm }} units={units} />
      <div className={sheet.fields}>
        <ChoiceField
          label="One unit of the file is"
          value={unit}
          choices={UNITS.map((value) => ({ value, label: UNIT_WORDS[value] }))}
          onCommit={chooseUnit}
        />
        <CheckField label="Show it from its other side" checked={otherSide} onCommit={setOtherSide} />
      </div>
      <ScanPicture samples={scan.samples} otherSide={otherSide} />
      <ScanMarks places={places} />
      <div className={sheet.bar}>
        <Button look="main" disabled={pairs.length < 3} onClick={() => void align()}>
          Align and compare
        </Button>
        <span className={sheet.soft}>
          {pairs.length < 3 ? `${pairs.length} of 3 marks found` : 'The sections then draw it into place.'}
        </span>
      </div>
      {compared ? <ScanCompared compared={compared} sections={sections} /> : null}
    </>
  );
};

/** A scan beside the tape: loaded, set by three marks, drawn to the sections, compared with them. */
export const ScanPart = () => {
  const { scan, busy, problems } = useScan();
  const space = useEditor((editor) => editor.judgement?.space ?? null);
  const kept = useEditor((editor) => editor.history.design.survey.scan);
  const units = useUnits();
  const made = space?.ok ? space.value : null;
  const span = (low: Vec3, high: Vec3): number => Math.max(...low.map((at, i) => (high[i] ?? 0) - at));
  const longestMm = made ? span(made.bounds.min, made.bounds.max) : USUAL_LENGTH_MM;
  return (
    <>
      <p className={sheet.soft}>
        A triangle mesh of the cargo area (GLB, PLY, STL or OBJ, up to 2 million triangles) laid beside the tape. It
        shows where the tape was read wrong and gives stations between the taped ones. It stays on this machine and is
        not kept in the design.
      </p>
      <div className={sheet.bar}>
        <LoadButton longestMm={longestMm} again={scan !== null} />
        {busy ? (
          <>
            <span aria-live="polite">{busy}…</span>
            <Button onClick={putScanAway}>Cancel</Button>
          </>
        ) : null}
        {scan && !busy ? <Button onClick={putScanAway}>Put it away</Button> : null}
      </div>
      {!scan && kept ? (
        <p className={sheet.soft}>
          {kept.name} lay beside the tape before: {kept.triangles.toLocaleString('en-US')} triangles, agreed within{' '}
          {formatLengthUnit(kept.rmsMm, units)} (1σ). Load it again to compare.
        </p>
      ) : null}
      {problems.length > 0 ? (
        <ul className={sheet.problems} aria-label="What is wrong with the scan">
          {problems.map((problem) => (
            <li key={`${problem.at} ${problem.code}`}>
              <SeverityMark severity="caution" />
              <span>{sayProblem(problem)}.</span>
            </li>
          ))}
        </ul>
      ) : null}
      <LoadedPart sections={made?.sections ?? NO_SECTIONS} longestMm={longestMm} />
    </>
  );
};
