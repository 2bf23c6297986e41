/** The rates of the chances as the farm's policy sets them. */
import { defaultRates, type Rates } from './chances/rates.ts'
import type { Policy } from './policy.ts'

/**
 * The default rates with the policy's own in their place.
 *
 * @example ratesOfPolicy(standardPolicy).conception.cowSexed // 0.4675
 */
export const ratesOfPolicy = (policy: Policy): Rates => ({
  ...defaultRates,
  cycle: {
    ...defaultRates.cycle,
    mean: policy.returnMean,
    meanYoung: policy.returnMeanYoung,
    sd: policy.returnSpread,
  },
  lateReturn: { ...defaultRates.lateReturn, share: policy.lateReturnShare },
  heatSeen: policy.heatDetection,
  conception: {
    cowConventional: policy.cowConception,
    cowSexed: policy.cowConception * policy.sexedCowFactor,
    maidenConventional: policy.maidenConception,
    maidenSexed: policy.maidenConception * policy.sexedMaidenFactor,
    natural: policy.naturalConception,
  },
  openPerBull: policy.openPerBull,
})
