import { convert } from '@spindlewright/quantity';
import {
  assemblyLimit,
  boltStiffness,
  frustumStiffness,
  loadFactor,
  memberStiffness,
  metricThread,
  minimumEngagement,
  preloadFromTorque,
  propertyClass,
  strippingEngagement,
  type Thread,
  targetTorque,
  threadFor,
  tighteningScatter,
  toolTorque,
  torqueFromPreload,
  unifiedThread,
  type WilemanMaterial,
  wilemanStiffness,
  wrenchSetting,
} from '@spindlewright/torque';
import { type Adapters, numberIn, type Row, textIn } from '../adapter.ts';

const MM2_PER_IN2 = 25.4 ** 2;
/** N/mm in a million pounds-force per inch. */
const inMlbfPerIn = (stiffnessNPerMm: number): number => (convert(stiffnessNPerMm, 'N', 'lbf') * 25.4) / 1e6;
const mpsiInGPa = (modulus: number): number => convert(modulus * 1e6, 'psi', 'MPa') / 1000;
const circle = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2;

const threadOf = (row: Row): Thread => threadFor(textIn(row, 'designation'));

/** Offsets of the profile from the major diameter, in pitches. */
const offsets = (thread: Thread) => {
  const offset = (diameterMm: number): number => (thread.majorDiameterMm - diameterMm) / thread.pitchMm;
  return {
    pitchOffset: offset(thread.pitchDiameterMm),
    minorOffset: offset(thread.minorDiameterMm),
    stressOffset: offset(thread.stressDiameterMm),
  };
};

const geometry = (row: Row) => {
  const thread = threadOf(row);
  return { ...thread, minorAreaMm2: circle(thread.minorDiameterMm) };
};

const inches = (thread: Thread) => ({
  stressAreaIn2: thread.stressAreaMm2 / MM2_PER_IN2,
  minorAreaIn2: circle(thread.minorDiameterMm) / MM2_PER_IN2,
  minorDiameterIn: thread.minorDiameterMm / 25.4,
  pitchDiameterIn: thread.pitchDiameterMm / 25.4,
});

const unified = (row: Row): Thread =>
  unifiedThread({
    nominalDiameterIn: numberIn(row, 'nominalDiameterIn'),
    threadsPerInch: numberIn(row, 'threadsPerInch'),
  });

const areas = (row: Row) => inches(threadOf(row));

const proofLoad = (row: Row) => {
  const thread = threadOf(row);
  const { proofStressMPa, tensileStrengthMPa } = propertyClass(textIn(row, 'propertyClass'), thread.majorDiameterMm);
  return {
    proofLoadN: thread.stressAreaMm2 * (proofStressMPa ?? 0),
    ultimateLoadN: thread.stressAreaMm2 * tensileStrengthMPa,
  };
};

const assembly = (row: Row) => {
  const { preloadN, torqueNm } = assemblyLimit({
    thread: threadOf(row),
    propertyClass: textIn(row, 'propertyClass'),
    threadFriction: numberIn(row, 'friction'),
    bearing: { outerDiameterMm: numberIn(row, 'outerDiameterMm'), holeDiameterMm: numberIn(row, 'holeDiameterMm') },
  });
  return { preloadKN: preloadN / 1000, torqueNm };
};

const preloadByNutFactor = (row: Row) => {
  const { preloadN } = preloadFromTorque({
    torqueNm: convert(numberIn(row, 'torqueLbfFt'), 'lbf.ft', 'Nm'),
    thread: threadFor('7/8-9 UNC'),
    nutFactor: numberIn(row, 'nutFactor'),
    method: 'nut-factor',
  });
  return { preloadLbf: convert(preloadN, 'N', 'lbf') };
};

/** Torque coefficient by the handbook's own formula, with the hexagon head of the size. */
const coefficient = (designation: string, outerDiameterMm: number, holeDiameterMm: number) => (row: Row) => ({
  nutFactor: torqueFromPreload({
    preloadN: 1000,
    thread: threadFor(designation),
    threadFriction: numberIn(row, 'threadFriction'),
    bearingFriction: numberIn(row, 'bearingFriction'),
    bearing: { outerDiameterMm, holeDiameterMm },
    method: 'nut-factor',
  }).nutFactor,
});

const frustumInInches = (row: Row) => ({
  stiffnessMlbfPerIn: inMlbfPerIn(
    frustumStiffness({
      outerFaceDiameterMm: numberIn(row, 'outerFaceDiameterIn') * 25.4,
      holeDiameterMm: numberIn(row, 'holeDiameterIn') * 25.4,
      thicknessMm: numberIn(row, 'thicknessIn') * 25.4,
      modulusGPa: mpsiInGPa(numberIn(row, 'modulusMpsi')),
    }).stiffnessNPerMm,
  ),
});

/** N/mm from a million pounds-force per inch. */
const mlbfPerInInNPerMm = (stiffness: number): number => convert(stiffness * 1e6, 'lbf', 'N') / 25.4;

/** Numbers of a cell such as `0.5/30;0.75/14.5`. */
const listIn = (row: Row, column: string): number[][] =>
  textIn(row, column)
    .split(';')
    .map((part) => part.split('/').map(Number));

const packInInches = (row: Row) =>
  memberStiffness({
    layers: listIn(row, 'layersInMpsi').map(([thickness = 0, modulus = 0]) => ({
      thicknessMm: thickness * 25.4,
      modulusGPa: mpsiInGPa(modulus),
    })),
    faceDiameterMm: numberIn(row, 'faceDiameterIn') * 25.4,
    holeDiameterMm: numberIn(row, 'holeDiameterIn') * 25.4,
  });

const packStiffness = (row: Row) => ({ stiffnessMlbfPerIn: inMlbfPerIn(packInInches(row).stiffnessNPerMm) });

const metricPack = (row: Row) => {
  const { cones, stiffnessNPerMm } = memberStiffness({
    layers: listIn(row, 'layersMmGPa').map(([thicknessMm = 0, modulusGPa = 0]) => ({ thicknessMm, modulusGPa })),
    faceDiameterMm: numberIn(row, 'faceDiameterMm'),
    holeDiameterMm: numberIn(row, 'holeDiameterMm'),
  });
  const [firstMNPerM = 0, secondMNPerM = 0, thirdMNPerM = 0] = cones.map((cone) => cone.stiffnessNPerMm / 1000);
  return { firstMNPerM, secondMNPerM, thirdMNPerM, stiffnessMNPerM: stiffnessNPerMm / 1000 };
};

const sharedLoad = (row: Row) => {
  const preloadN = row.preloadKip === undefined ? 0 : convert(numberIn(row, 'preloadKip') * 1000, 'lbf', 'N');
  const externalLoadN = row.loadKip === undefined ? 0 : convert(numberIn(row, 'loadKip') * 1000, 'lbf', 'N');
  return loadFactor({
    boltStiffnessNPerMm: mlbfPerInInNPerMm(numberIn(row, 'boltStiffnessMlbfPerIn')),
    memberStiffnessNPerMm: mlbfPerInInNPerMm(numberIn(row, 'memberStiffnessMlbfPerIn')),
    preloadN,
    externalLoadN,
  });
};

const fitInInches = (row: Row) =>
  wilemanStiffness({
    nominalDiameterMm: numberIn(row, 'nominalDiameterIn') * 25.4,
    gripLengthMm: numberIn(row, 'gripIn') * 25.4,
    modulusGPa: mpsiInGPa(numberIn(row, 'modulusMpsi')),
    material: textIn(row, 'material') as WilemanMaterial,
  }).stiffnessNPerMm;

const scatter = (row: Row) => {
  const found = tighteningScatter({ meanPreloadN: 100, method: textIn(row, 'rowId') });
  return {
    minScatterPercent: found.bestN.upper - 100,
    maxScatterPercent: found.worstN.upper - 100,
    minTighteningFactor: found.minTighteningFactor,
    maxTighteningFactor: found.maxTighteningFactor,
  };
};

export const adapters: Adapters = {
  'metric-profile-constants': (row) =>
    offsets(metricThread({ nominalDiameterMm: numberIn(row, 'nominalDiameterMm'), pitchMm: numberIn(row, 'pitchMm') })),
  'metric-coarse-areas': geometry,
  'metric-coarse-areas-m10': geometry,
  'metric-nominal-areas': geometry,
  'metric-nominal-areas-large': geometry,
  'metric-fine-dimensions': geometry,
  'metric-fine-dimensions-large': geometry,
  'metric-fine-areas-erratum': geometry,
  'metric-m15x1': geometry,
  'unified-areas': areas,
  'unified-areas-cut-off': areas,
  'unified-areas-large': areas,
  'unified-profile-constants': (row) => offsets(unified(row)),
  'unified-area-metric-constant-erratum': (row) => inches(unified(row)),
  'unified-half-13': (row) => inches(unified(row)),
  'property-class-strengths': (row) => {
    const strengths = propertyClass(textIn(row, 'propertyClass'), numberIn(row, 'nominalDiameterMm'));
    const { proofStressMPa, tensileStrengthMPa, yieldStrengthMPa } = strengths;
    return { proofStressMPa, tensileStrengthMPa, yieldStrengthMPa };
  },
  'proof-loads-coarse': proofLoad,
  'proof-loads-fine': proofLoad,
  'ultimate-loads-coarse': proofLoad,
  'ultimate-load-m12-erratum': proofLoad,
  'waisted-bolts': (row) => {
    const waistDiameterMm = 0.9 * threadOf(row).minorDiameterMm;
    return { waistDiameterMm, waistAreaMm2: circle(waistDiameterMm) };
  },
  'major-diameters-6g': (row) => {
    const { majorDiameterMm, pitchMm } = threadOf(row);
    return { maxMajorDiameter6gMm: majorDiameterMm - (15 + 11 * pitchMm) / 1000 };
  },
  'core-holes': (row) => {
    const { majorDiameterMm, pitchMm } = threadOf(row);
    return { coreHoleMm: majorDiameterMm - pitchMm };
  },
  'handbook-example-8-3': (row) => {
    const thread = threadOf(row);
    const friction = numberIn(row, 'friction');
    const preloadN = convert(numberIn(row, 'preloadLbf'), 'lbf', 'N');
    const byFriction = torqueFromPreload({
      preloadN,
      thread,
      threadFriction: friction,
      bearingFriction: friction,
      // Mean diameter 1.25 d, as the example takes its collar.
      bearing: { outerDiameterMm: 1.5 * thread.majorDiameterMm, holeDiameterMm: thread.majorDiameterMm },
    });
    const byNutFactor = torqueFromPreload({ preloadN, thread, nutFactor: 0.2, method: 'nut-factor' });
    return {
      minorDiameterIn: thread.minorDiameterMm / 25.4,
      meanDiameterIn: thread.pitchDiameterMm / 25.4,
      leadAngleDeg: thread.leadAngleDeg,
      torqueNutFactorLbfIn: convert(byNutFactor.torqueNm, 'Nm', 'lbf.in'),
      torqueLbfIn: convert(byFriction.torqueNm, 'Nm', 'lbf.in'),
      stressKpsi: convert(preloadN / thread.stressAreaMm2, 'MPa', 'psi') / 1000,
    };
  },
  'handbook-example-m10-yield': (row) => {
    const thread = threadOf(row);
    const { preloadN } = assemblyLimit({
      thread,
      propertyClass: { yieldStrengthMPa: numberIn(row, 'yieldStrengthMPa') },
      threadFriction: numberIn(row, 'friction'),
      bearing: { outerDiameterMm: 14.63, holeDiameterMm: 11 },
      utilisation: 1,
      torsion: 'elastic',
    });
    const nutFactor = numberIn(row, 'nutFactor');
    const { torqueNm } = torqueFromPreload({ preloadN, thread, nutFactor, method: 'nut-factor' });
    return { stressAreaMm2: thread.stressAreaMm2, stressDiameterMm: thread.stressDiameterMm, preloadN, torqueNm };
  },
  'vdi-2230-fine-threads': assembly,
  'vdi-2230-stainless-m8': assembly,
  'vdi-2230-m12-scatter': (row) => {
    const { preloadKN } = assembly({ ...row, outerDiameterMm: 16.63, holeDiameterMm: 13.5 });
    return { preloadKN, smallestPreloadKN: preloadKN / numberIn(row, 'tighteningFactor') };
  },
  'nut-factor-torques': (row) => {
    const { torqueNm } = torqueFromPreload({
      preloadN: convert(numberIn(row, 'preloadLbf'), 'lbf', 'N'),
      thread: threadFor('#10-32 UNF'),
      nutFactor: numberIn(row, 'nutFactor'),
      method: 'nut-factor',
    });
    return { torqueLbfIn: convert(torqueNm, 'Nm', 'lbf.in') };
  },
  'nut-factor-preloads': preloadByNutFactor,
  'nut-factor-measured': preloadByNutFactor,
  'scatter-bookkeeping': (row) => {
    const { targetTorqueNm, torqueNm } = targetTorque({
      maximumTorqueNm: numberIn(row, 'maximumTorqueNm'),
      deviationPercent: numberIn(row, 'deviationPercent'),
    });
    return { targetTorqueNm, lowestTorqueNm: torqueNm.lower };
  },
  'torque-coefficients-coarse': coefficient('M10', 14.63, 11),
  'torque-coefficients-fine': coefficient('M16x1.5', 22.49, 17.5),
  'wrench-extension': (row) => {
    const { settingNm } = wrenchSetting({
      targetTorqueNm: convert(numberIn(row, 'targetLbfFt'), 'lbf.ft', 'Nm'),
      wrenchLengthMm: numberIn(row, 'wrenchLengthIn') * 25.4,
      extensionLengthMm: numberIn(row, 'extensionLengthIn') * 25.4,
      extensionAngleDeg: numberIn(row, 'extensionAngleDeg'),
    });
    return { settingLbfFt: convert(settingNm, 'Nm', 'lbf.ft') };
  },
  'tool-classes': (row) => {
    const torqueNm = numberIn(row, 'torqueNm');
    return { deviationPercent: toolTorque({ torqueNm, tool: 'click-wrench-iso-6789' }).deviationPercent };
  },
  'stripping-example': (row) => {
    const { engagementMm } = strippingEngagement({
      thread: threadOf(row),
      loadN: numberIn(row, 'loadN'),
      shearStrengthMPa: numberIn(row, 'shearStrengthMPa'),
      externalMajorDiameterMm: numberIn(row, 'externalMajorDiameterMm'),
      internalPitchDiameterMm: numberIn(row, 'internalPitchDiameterMm'),
    });
    return { engagementMm };
  },
  'frusta-inch': frustumInInches,
  'frustum-printed-modulus-erratum': frustumInInches,
  'frustum-corrected-modulus': frustumInInches,
  'frusta-metric': (row) => ({
    stiffnessMNPerM:
      frustumStiffness({
        outerFaceDiameterMm: numberIn(row, 'outerFaceDiameterMm'),
        holeDiameterMm: numberIn(row, 'holeDiameterMm'),
        thicknessMm: numberIn(row, 'thicknessMm'),
        modulusGPa: numberIn(row, 'modulusGPa'),
      }).stiffnessNPerMm / 1000,
  }),
  'bolt-stiffness-examples': (row) => {
    const part = (area: string, length: string) => ({
      areaMm2: numberIn(row, area) * MM2_PER_IN2,
      lengthMm: numberIn(row, length) * 25.4,
    });
    const threaded = part('threadAreaIn2', 'threadLengthIn');
    const segments = row.shankAreaIn2 === null ? [threaded] : [part('shankAreaIn2', 'shankLengthIn'), threaded];
    return { stiffnessMlbfPerIn: inMlbfPerIn(boltStiffness({ segments, modulusGPa: mpsiInGPa(30) }).stiffnessNPerMm) };
  },
  'member-stiffness-handbook': packStiffness,
  'member-stiffness-solutions': packStiffness,
  'member-stiffness-metric': metricPack,
  'member-stiffness-metric-erratum': metricPack,
  'member-stiffness-metric-corrected': metricPack,
  'member-cones-geometry': (row) => {
    const { gripLengthMm, cones } = packInInches(row);
    const heights = cones.map((cone) => cone.thicknessMm / 25.4);
    const [washer = 0, steel = 0, iron = 0] = heights;
    return {
      gripIn: gripLengthMm / 25.4,
      middleIn: washer + steel + iron,
      thirdLayerInTopConeIn: iron,
      thirdLayerFaceIn: (cones[2]?.outerFaceDiameterMm ?? 0) / 25.4,
    };
  },
  'cone-series-cap-screw': (row) => {
    const compliances = listIn(row, 'conesInMpsi').map(([face = 0, thickness = 0, modulus = 0]) => {
      const cone = { outerFaceDiameterIn: face, thicknessIn: thickness, modulusMpsi: modulus };
      return 1 / frustumInInches({ ...row, ...cone }).stiffnessMlbfPerIn;
    });
    return { stiffnessMlbfPerIn: 1 / compliances.reduce((sum, compliance) => sum + compliance, 0) };
  },
  'load-factor-solutions': (row) => ({ loadFactor: sharedLoad(row).loadFactor }),
  'load-factor-handbook': (row) => {
    const { loadFactor: share, boltForceN } = sharedLoad(row);
    return {
      loadFactor: share,
      boltStressKpsi: convert(boltForceN, 'N', 'lbf') / numberIn(row, 'stressAreaIn2') / 1000,
    };
  },
  'load-factor-example-8-4': (row) => {
    const { loadFactor: share, boltForceN, separationLoadN } = sharedLoad(row);
    const loadN = convert(numberIn(row, 'loadKip') * 1000, 'lbf', 'N');
    const preloadN = convert(numberIn(row, 'preloadKip') * 1000, 'lbf', 'N');
    const proofLoad = numberIn(row, 'proofStrengthKpsi') * numberIn(row, 'stressAreaIn2') * 1000;
    const proofLoadN = convert(proofLoad, 'lbf', 'N');
    return {
      loadFactor: share,
      proofFactor: proofLoadN / boltForceN,
      overloadFactor: (proofLoadN - preloadN) / (boltForceN - preloadN),
      separationFactor: separationLoadN / loadN,
    };
  },
  'wileman-handbook': (row) => ({ stiffnessMlbfPerIn: inMlbfPerIn(fitInInches(row)) }),
  'wileman-solutions': (row) => ({ stiffnessMlbfPerIn: inMlbfPerIn(fitInInches(row)) }),
  'wileman-halves': (row) => {
    const steel = 2 * fitInInches({ ...row, material: 'steel', modulusMpsi: 30 });
    const iron = 2 * fitInInches({ ...row, material: 'cast-iron', modulusMpsi: 14.5 });
    return { stiffnessMlbfPerIn: inMlbfPerIn(1 / (1 / steel + 1 / iron)) };
  },
  'wileman-ratio': (row) => {
    const nominalDiameterMm = 10;
    const gripLengthMm = nominalDiameterMm / numberIn(row, 'diameterOverGrip');
    const { stiffnessRatio } = wilemanStiffness({ nominalDiameterMm, gripLengthMm, modulusGPa: 207 });
    return { stiffnessRatio };
  },
  'bolt-stiffness-series': (row) => {
    // A segment of a given stiffness: k l/E for its area.
    const segment = (column: string) => ({
      areaMm2: (mlbfPerInInNPerMm(numberIn(row, column)) * 10) / 207_000,
      lengthMm: 10,
    });
    const segments = [segment('threadedMlbfPerIn'), segment('plainMlbfPerIn')];
    return { stiffnessMlbfPerIn: inMlbfPerIn(boltStiffness({ segments, modulusGPa: 207 }).stiffnessNPerMm) };
  },
  'oversize-nut-proof-loads': (row) => ({
    proofLoadN: numberIn(row, 'proofStressMPa') * threadOf(row).stressAreaMm2,
  }),
  'scatter-handbook': scatter,
  'scatter-nasa': scatter,
  'scatter-vdi-1986': scatter,
  'scatter-paper': scatter,
  'engagement-lengths': (row) => {
    const { engagementDiametersRatio } = minimumEngagement({
      thread: threadFor('M10'),
      pitch: textIn(row, 'pitch') as 'coarse' | 'fine',
      propertyClass: textIn(row, 'propertyClass'),
      nutMaterial: textIn(row, 'nutMaterial'),
    });
    return { engagementDiametersRatio };
  },
  'tightening-factors': scatter,
  'vdi-2230-stainless-m6': assembly,
  'torque-list-lower-use': (row) => ({ torqueNm: 0.915 * assembly(row).torqueNm }),
  'bolt-thread-engagement': (row) => {
    const tensileStrengthMPa = 800;
    const { engagementMm } = strippingEngagement({
      thread: threadOf(row),
      loadN: tensileStrengthMPa * numberIn(row, 'stressAreaIn2') * MM2_PER_IN2,
      shearStrengthMPa: tensileStrengthMPa / 2,
      part: 'bolt',
      externalPitchDiameterMm: numberIn(row, 'externalPitchDiameterIn') * 25.4,
      internalMinorDiameterMm: numberIn(row, 'internalMinorDiameterIn') * 25.4,
    });
    return { engagementIn: engagementMm / 25.4 };
  },
};
